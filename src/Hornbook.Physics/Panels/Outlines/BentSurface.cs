using System.Globalization;
using Hornbook.Physics.Panels.Outlines.Curved;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A flat panel bent to a piece of a circular cylinder; the line through its origin along the axis stays where it was. Immutable.</summary>
/// <remarks>Bending changes no length, angle or area within the sheet: cells and feet are those of the blank, rolled up. Eq. outlines (4).</remarks>
public sealed class BentSurface : PanelSurface
{
    // Straight sides are drawn in steps of 2°.
    private const double LoopStep = Math.PI / 90.0;

    private readonly PanelSurface _blank;
    private readonly Cylinder _cylinder;

    /// <summary>Bends a flat panel.</summary>
    /// <param name="blank">The panel before it is bent; flat.</param>
    /// <param name="radius">Radius of the cylinder [m]; finite, &gt; 0, and so large that no part is bent by more than a quarter turn from the origin.</param>
    /// <param name="axis">Direction of the cylinder.</param>
    /// <param name="hollowFace">The face towards the axis of the cylinder; the front face looks along +x.</param>
    /// <exception cref="ArgumentException">The blank is not flat.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is out of its range.</exception>
    public BentSurface(PanelSurface blank, double radius, BendAxis axis, SheetFace hollowFace)
    {
        ArgumentNullException.ThrowIfNull(blank);
        _blank = blank.IsFlat ? blank : throw new ArgumentException("blank: it is bent already; must be flat", nameof(blank));
        _cylinder = new Cylinder(Require.Positive(radius), axis, hollowFace == SheetFace.Front ? 1.0 : -1.0);
        double farthest = blank.Loops.SelectMany(loop => loop).Max(point => Math.Abs(_cylinder.Bent(point)));
        if (farthest > 0.5 * Math.PI * radius)
        {
            throw new ArgumentOutOfRangeException(nameof(radius), radius, string.Create(CultureInfo.InvariantCulture,
                $"radius = {radius}; must be at least {2.0 * farthest / Math.PI} m, so that no part is bent by more than a quarter turn"));
        }

        Rims = [.. blank.Rims.Select(rim => new RolledRim(rim, _cylinder))];
        Loops = [.. blank.Loops.Select(Rolled)];
        (Width, Height) = (Extent(point => point.Y), Extent(point => point.Z));
    }

    /// <inheritdoc/>
    public override double Width { get; }

    /// <inheritdoc/>
    public override double Height { get; }

    /// <inheritdoc/>
    public override bool IsFlat => false;

    /// <inheritdoc/>
    public override IReadOnlyList<Rim> Rims { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<Vector>> Loops { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Cell> Cells(double spacing) => [.. _blank.Cells(spacing).Select(_cylinder.Rolled)];

    private double Extent(Func<Vector, double> along) => Loops.SelectMany(loop => loop).Max(along) - Loops.SelectMany(loop => loop).Min(along);

    private IReadOnlyList<Vector> Rolled(IReadOnlyList<Vector> loop) =>
        [.. loop.SelectMany((point, i) => Steps(point, loop[(i + 1) % loop.Count])).Select(_cylinder.Rolled)];

    private IEnumerable<Vector> Steps(Vector from, Vector to)
    {
        int steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(_cylinder.Bent(to - from)) / (LoopStep * _cylinder.Radius)));
        return Enumerable.Range(0, steps).Select(i => from + ((to - from) * ((double)i / steps)));
    }
}
