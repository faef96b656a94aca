namespace Hornbook.Bench.Demonstrations;

/// <summary>Something that limits a demonstration on this bench.</summary>
/// <param name="Kind">What sort of limit.</param>
/// <param name="Stretches">Where along the abscissa it holds, in the order shown; ≥ 1.</param>
/// <param name="Sentence">The same in words, with numbers.</param>
public sealed record Limit(LimitKind Kind, IReadOnlyList<Stretch> Stretches, string Sentence);
