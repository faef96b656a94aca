namespace Hornbook.Bench.Demonstrations;

/// <summary>What a curve shows, number by number, beside the textbook law.</summary>
/// <param name="Comparisons">The numbers, the most telling first; ≥ 1.</param>
public sealed record LawEvaluation(IReadOnlyList<Comparison> Comparisons) : Evaluation
{
    /// <summary>What the law says of each point of the curve, power over that of a point where the law is tied to the curve [-]; null where there is no such law.</summary>
    public IReadOnlyList<double>? Law { get; init; }

    /// <summary>The law in a few words: "cos⁴ of the grid's roll"; empty without one.</summary>
    public string LawName { get; init; } = string.Empty;
}
