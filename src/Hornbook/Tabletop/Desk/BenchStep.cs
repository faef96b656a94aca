using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;

namespace Hornbook.Tabletop.Desk;

/// <summary>The whole bench after something was done to it.</summary>
/// <param name="File">The bench file as it would be saved; always usable.</param>
/// <param name="What">What was done, as undo and redo name it: "moving the receiver".</param>
/// <param name="Run">What belongs to one run of the same key, so that holding it down is one step; null for a step of its own.</param>
/// <param name="At">When, on the desk's clock.</param>
public sealed record BenchStep(BenchFile File, string What, string? Run = null, long At = 0)
{
    public BenchPlan Plan => File.Plan ?? throw new InvalidOperationException($"{File.Name} has no plan");
}
