using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Tabletop.Desk;

/// <summary>Everything that lies on the desk at one moment; immutable, so that any thread may look at it.</summary>
/// <param name="History">The bench, and what was done to it.</param>
/// <param name="Scene">The bench as it is now, made ready to compute.</param>
public sealed record DeskState(History<BenchStep> History, Scene Scene)
{
    public BenchFile File => History.Present.File;

    public BenchPlan Plan => Scene.Plan;

    /// <summary>The same desk with another present; what can be computed once is taken over.</summary>
    internal DeskState With(History<BenchStep> history) => new(history, Scene.With(history.Present.Plan));
}
