using Hornbook.Bench.Explanations;

namespace Hornbook.Tabletop;

/// <summary>A number that somebody wants explained.</summary>
/// <param name="Topic">Which.</param>
/// <param name="From">The button that was pressed: the keyboard goes back there.</param>
public sealed record Asked(ExplanationTopic Topic, string From);
