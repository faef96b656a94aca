namespace Hornbook.Drawing.Figures;

/// <summary>The horizontal axis of a figure.</summary>
/// <param name="Label">Quantity and unit.</param>
public sealed record HorizontalAxis(string Label)
{
    /// <summary>Names that stand at 1, 2, 3 … instead of numbers; empty for numbers.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];
}
