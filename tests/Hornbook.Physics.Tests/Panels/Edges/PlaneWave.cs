using System.Numerics;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>A plane wave at the rim of the sheet y = 0, x &gt; 0: from the angle φ0 to the sheet, at the angle β to the rim.</summary>
internal sealed record PlaneWave(double Arrival, double Beta, Complex First, Complex Second)
{
    public Vector Direction => new(-Math.Sin(Beta) * Math.Cos(Arrival), -Math.Sin(Beta) * Math.Sin(Arrival), Math.Cos(Beta));

    /// <summary>The field at the origin: two polarisations across the direction of travel.</summary>
    public FieldSample Field
    {
        get
        {
            Vector one = Vector.Cross(Direction, new Vector(0.6, -0.48, 0.64)).Unit, two = Vector.Cross(Direction, one);
            ComplexVector electric = ComplexVector.Along(one, First) + ComplexVector.Along(two, Second);
            return new FieldSample(electric, ComplexVector.Cross(Direction, electric) * (1.0 / Constants.VacuumImpedance));
        }
    }
}
