namespace Hornbook.Bench.Beginnings;

/// <summary>Why there is no bench for a wish.</summary>
/// <param name="Question">The answer to change.</param>
/// <param name="Why">What is wrong with it and what would do, one or two sentences.</param>
public sealed record Obstacle(BenchQuestion Question, string Why);
