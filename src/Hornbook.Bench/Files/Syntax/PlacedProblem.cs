using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>Something wrong at a place.</summary>
/// <param name="Place">Where.</param>
/// <param name="What">What was read, what fits, what to type.</param>
internal readonly record struct PlacedProblem(Place Place, Misreading What);
