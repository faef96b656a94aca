using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>A panel's cells in the bench frame. Immutable.</summary>
internal sealed class PanelInPlace
{
    private readonly Vector[] _normals;
    private readonly Vector[] _across;
    private readonly Frame _frame;

    internal PanelInPlace(PosedPanel posed)
    {
        Posed = posed;
        _frame = Frame.Of(posed.Pose);
        Cell[] cells = posed.Panel.Cells;
        Points = Array.ConvertAll(cells, cell => _frame.Place(cell.Centre));
        _normals = Array.ConvertAll(cells, cell => Turned(cell.Normal));
        _across = Array.ConvertAll(cells, cell => Turned(cell.Across));
    }

    /// <summary>The panel and its pose.</summary>
    internal PosedPanel Posed { get; }

    /// <summary>The centres of its cells [m].</summary>
    internal Vector[] Points { get; }

    /// <summary>How far out of the plane of the panel a point lies, positive in front of it [m].</summary>
    internal double InFront(Vector point) => Vector.Dot(point - _frame.Origin, _frame.Forward);

    /// <summary>The front normal of a cell.</summary>
    internal Vector Normal(int cell) => _normals[cell];

    /// <summary>The currents that the panel answers with.</summary>
    /// <param name="arrivals">The fields that arrive at its cells.</param>
    internal CurrentSamples Answer(Arrivals arrivals)
    {
        ComplexVector[] electric = new ComplexVector[Points.Length];
        ComplexVector[] magnetic = new ComplexVector[Points.Length];
        WorkSharing.For(Points.Length, (first, last) =>
        {
            for (int i = first; i < last; i++)
            {
                (electric[i], magnetic[i]) = arrivals.Jump(i, Posed.Panel, _normals[i], _across[i]);
            }
        });
        return new CurrentSamples(Points, electric, magnetic);
    }

    private Vector Turned(Vector own) => (_frame.Forward * own.X) + (_frame.Left * own.Y) + (_frame.Up * own.Z);
}
