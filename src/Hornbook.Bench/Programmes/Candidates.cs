using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Programmes;

/// <summary>One way to show a demonstration.</summary>
/// <param name="Demonstration">What is shown.</param>
/// <param name="Bench">How everything stands and is set.</param>
/// <param name="Arrangement">The two things that are shared with its neighbours.</param>
/// <param name="Merit">How well it is heard.</param>
internal sealed record Choice(Demonstration Demonstration, BenchPlan Bench, Arrangement Arrangement, Merit Merit);

/// <summary>The ways to show one demonstration: for each arrangement the best that was found.</summary>
/// <param name="Demonstration">What is shown.</param>
/// <param name="Choices">One for each arrangement in which it can be shown.</param>
internal sealed record Candidates(Demonstration Demonstration, IReadOnlyList<Choice> Choices)
{
    /// <summary>Why it cannot be shown at all.</summary>
    internal string Why => $"'{Demonstration.Name}' does not fit on the table: something would leave it, or stand in something else, at every distance that was tried.";

    /// <summary>Tries every demonstration in every arrangement.</summary>
    internal static IReadOnlyList<Candidates> Of(
        Scene scene, IReadOnlyList<Demonstration> wanted, Action<double> progress, CancellationToken cancellation)
    {
        BenchPlan plan = scene.Plan;
        ExposureLimit? holds = ChosenLimit.Of(plan) ?? ExposureLimits.Strictest(ExposureGroup.Public, plan.Frequency);
        (Demonstration Shown, double Reach, BenchPlan Bench)[] jobs =
        [
            .. wanted.SelectMany(shown => Arrangement.Reaches(plan).SelectMany(reach => shown.Arrangements(plan, reach).Select(bench => (shown, reach, bench)))),
        ];
        int done = 0;
        Trial?[] trials = SideBySide.Each(jobs, job =>
        {
            Trial? trial = Trial.Of(scene, job.Shown, job.Bench, holds);
            progress((double)Interlocked.Increment(ref done) / jobs.Length);
            return trial;
        }, cancellation);
        ILookup<double, Trial> Tried(Demonstration shown) => jobs.Zip(trials)
            .Where(tried => tried.First.Shown == shown && tried.Second is not null).ToLookup(tried => tried.First.Reach, tried => tried.Second!);
        return [.. wanted.Select(shown => new Candidates(shown, [.. Best(plan, shown, Tried(shown))]))];
    }

    private static IEnumerable<Choice> Best(BenchPlan plan, Demonstration shown, ILookup<double, Trial> trialsByReach)
    {
        foreach (IGrouping<double, Trial> trials in trialsByReach)
        {
            foreach (double gain in Arrangement.Gains(plan.Detection))
            {
                DetectionChain chain = plan.Detection with { Amplifier = plan.Detection.Amplifier with { Gain = gain } };
                yield return trials
                    .Select(trial => new Choice(shown, trial.Bench with { Detection = chain }, new Arrangement(trial.Reach, gain), trial.With(shown, chain)))
                    .MaxBy(choice => choice.Merit.Worth)!;
            }
        }
    }
}
