namespace Hornbook.Drawing.Figures;

/// <summary>A line of a figure, with the band in which it may really lie.</summary>
/// <param name="Label">Its name in the legend; empty for none.</param>
/// <param name="X">Abscissae, ascending, length n ≥ 1.</param>
/// <param name="Y">Ordinates, length n; NaN leaves a gap.</param>
public sealed record Trace(string Label, IReadOnlyList<double> X, IReadOnlyList<double> Y)
{
    /// <summary>Lower edge of the band, length n; empty for none.</summary>
    public IReadOnlyList<double> Low { get; init; } = [];

    /// <summary>Upper edge of the band, length n; empty for none.</summary>
    public IReadOnlyList<double> High { get; init; } = [];

    /// <summary>Whether the points are things apart, with nothing between them to draw a line through.</summary>
    public bool Apart { get; init; }
}
