using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;

namespace Hornbook.Bench.Programmes;

/// <summary>A demonstration in a programme.</summary>
/// <param name="Demonstration">What is shown.</param>
/// <param name="Bench">How everything stands and is set for it, before it moves anything itself.</param>
/// <param name="Prediction">What will be heard.</param>
/// <param name="ToDo">What the presenter changes since the demonstration before, one sentence each; for the first, since the bench file.</param>
/// <param name="GivenUp">What could not be had for it, one sentence each.</param>
public sealed record ProgrammeItem(
    Demonstration Demonstration, BenchPlan Bench, Prediction Prediction, IReadOnlyList<string> ToDo, IReadOnlyList<string> GivenUp);
