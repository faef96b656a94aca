using Hornbook.Physics.Panels.Outlines.Cutting;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A flat rectangle without openings.</summary>
public sealed class RectangularSurface : PanelSurface
{
    // What the midpoint rule lacks at an end is h²/24 of the slope there, by Euler and Maclaurin; here with the slope of the last two samples.
    private const double EndCorrection = 1.0 / 24.0;
    private const int FewestCorrected = 4;

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

    /// <summary>Cells whose areas are those of the corrected midpoint rule along both sides. Eq. outlines (3).</summary>
    internal override IReadOnlyList<Cell> SmoothCells(double spacing)
    {
        IReadOnlyList<Cell> cells = Cells(spacing);
        int columns = cells.TakeWhile(cell => cell.Centre.Z == cells[0].Centre.Z).Count(), rows = cells.Count / columns;
        return [.. cells.Select((cell, i) => cell with { Area = cell.Area * Weight(i % columns, columns) * Weight(i / columns, rows) })];
    }

    // Of the samples of a row, those at its ends.
    private static double Weight(int place, int count) => count < FewestCorrected
        ? 1.0
        : Math.Min(place, count - 1 - place) switch { 0 => 1.0 + EndCorrection, 1 => 1.0 - EndCorrection, _ => 1.0 };
}
