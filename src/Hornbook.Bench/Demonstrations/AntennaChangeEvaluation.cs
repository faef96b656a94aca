namespace Hornbook.Bench.Demonstrations;

/// <summary>The gain that the bench will show.</summary>
/// <param name="Changed">Which end's antenna is changed.</param>
/// <param name="Steps">One for each antenna, in the order shown.</param>
public sealed record AntennaChangeEvaluation(BenchEnd Changed, IReadOnlyList<AntennaStep> Steps) : Evaluation;
