namespace Hornbook.Bench.Demonstrations;

/// <summary>Something that limits a demonstration on this bench.</summary>
/// <param name="Kind">What sort of limit.</param>
/// <param name="From">Where along the abscissa it begins, SI units.</param>
/// <param name="To">Where it ends, SI units.</param>
/// <param name="Sentence">The same in words, with numbers.</param>
public sealed record Limit(LimitKind Kind, double From, double To, string Sentence);
