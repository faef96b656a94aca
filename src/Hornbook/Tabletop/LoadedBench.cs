using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Tabletop;

/// <summary>The bench that the page shows, made ready to compute once and shared by everyone who looks.</summary>
/// <param name="Scene">Plan and antennas.</param>
/// <param name="Name">What to call its file on the page.</param>
public sealed record LoadedBench(Scene Scene, string Name)
{
    public BenchPlan Plan => Scene.Plan;
}
