using Hornbook.Physics.Panels.Outlines.Cutting;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A flat rectangle without openings.</summary>
public sealed class RectangularSurface : PanelSurface
{
    /// <summary>A rectangle about the origin.</summary>
    /// <param name="width">Along its own y [m]; finite, &gt; 0.</param>
    /// <param name="height">Along its own z [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public RectangularSurface(double width, double height)
    {
        Width = Require.Positive(width);
        Height = Require.Positive(height);
        (double y, double z) = (0.5 * width, 0.5 * height);
        Vector[] corners = [new(0.0, -y, -z), new(0.0, y, -z), new(0.0, y, z), new(0.0, -y, z)];
        Rims = [.. corners.Select((corner, i) => new StraightRim(corner, corners[(i + 1) % 4]))];
        Loops = [corners];
    }

    /// <inheritdoc/>
    public override double Width { get; }

    /// <inheritdoc/>
    public override double Height { get; }

    /// <inheritdoc/>
    public override bool IsFlat => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Rim> Rims { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<Vector>> Loops { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Cell> Cells(double spacing) =>
        [.. FlatCell.Rectangle((-0.5 * Width, 0.5 * Width), (-0.5 * Height, 0.5 * Height), Require.Positive(spacing))];
}
