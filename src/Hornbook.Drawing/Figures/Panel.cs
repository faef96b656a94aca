namespace Hornbook.Drawing.Figures;

/// <summary>One plot of a figure: its vertical axis and what is drawn on it.</summary>
/// <param name="YLabel">Quantity and unit of the vertical axis.</param>
/// <param name="Traces">Lines, the first on top of the legend.</param>
public sealed record Panel(string YLabel, IReadOnlyList<Trace> Traces)
{
    /// <summary>Lowest ordinate shown; null for the data's own.</summary>
    public double? Lowest { get; init; }

    /// <summary>Highest ordinate shown; null for the data's own.</summary>
    public double? Highest { get; init; }

    /// <summary>Horizontal lines with a name: a rail, a limit, the noise.</summary>
    public IReadOnlyList<Mark> Levels { get; init; } = [];

    /// <summary>Vertical lines with a name: a width, a boundary.</summary>
    public IReadOnlyList<Mark> Places { get; init; } = [];

    /// <summary>Stretches of the horizontal axis that are greyed, because what is drawn there is not to be trusted.</summary>
    public IReadOnlyList<(double From, double To)> Greyed { get; init; } = [];
}

/// <summary>A named value on an axis.</summary>
/// <param name="Value">Where.</param>
/// <param name="Label">What it is.</param>
public sealed record Mark(double Value, string Label);
