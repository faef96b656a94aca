using System.Numerics;
using Hornbook.Physics.Radiation;
using MathNet.Numerics;

namespace Hornbook.Physics.Antennas;

/// <summary>The pattern of an antenna far away, co- and cross-polar after Ludwig's third definition [Ludwig1973].</summary>
public static class FarPattern
{
    /// <summary>Angle off the axis up to which the currents over the mouth alone predict the pattern [rad]: 60° [-].</summary>
    /// <remarks>Beyond it the currents on the outside of the walls, which the model leaves out, matter (docs/physics/antennas.md).</remarks>
    public const double TrustedAngle = Math.PI / 3.0;

    /// <summary>Both polarisations towards one direction.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    /// <param name="angle">Off the axis, positive to the left or up [rad].</param>
    /// <returns>Amplitudes whose squared magnitude is directivity [-]; phase refers to the centre of the mouth.</returns>
    public static PatternPoint Towards(Antenna antenna, PatternPlane plane, double angle) => Cut(antenna, plane, [Require.Finite(angle)])[0];

    /// <summary>A cut, evenly spaced.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    /// <param name="from">First angle [rad].</param>
    /// <param name="to">Last angle [rad].</param>
    /// <param name="points">How many; ≥ 2.</param>
    public static IReadOnlyList<PatternPoint> Cut(Antenna antenna, PatternPlane plane, double from, double to, int points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        return Cut(antenna, plane, Generate.LinearSpaced(points, Require.Finite(from), Require.Finite(to)));
    }

    private static PatternPoint[] Cut(Antenna antenna, PatternPlane plane, double[] angles)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        (double sinPhi, double cosPhi) = Math.SinCos(Azimuth(plane));
        Vector aside = new(0.0, cosPhi, sinPhi);
        Vector phi = new(0.0, -sinPhi, cosPhi);
        Vector[] directions = Array.ConvertAll(angles, angle => new Vector(Math.Cos(angle), 0.0, 0.0) + (aside * Math.Sin(angle)));
        ComplexVector[] fields = new ComplexVector[angles.Length];
        FarField.Evaluate(antenna.Currents, antenna.Wavenumber, directions, fields);
        double toDirectivity = Math.Sqrt(2.0 * Math.PI / Constants.VacuumImpedance);
        PatternPoint[] cut = new PatternPoint[angles.Length];
        for (int i = 0; i < cut.Length; i++)
        {
            Vector theta = new Vector(-Math.Sin(angles[i]), 0.0, 0.0) + (aside * Math.Cos(angles[i]));
            Complex co = fields[i].Component((theta * sinPhi) + (phi * cosPhi)) * toDirectivity;
            Complex cross = fields[i].Component((theta * cosPhi) - (phi * sinPhi)) * toDirectivity;
            cut[i] = new PatternPoint(angles[i], co, cross);
        }

        return cut;
    }

    private static double Azimuth(PatternPlane plane) => plane switch
    {
        PatternPlane.Electric => 0.5 * Math.PI,
        PatternPlane.Magnetic => 0.0,
        _ => 0.25 * Math.PI,
    };
}
