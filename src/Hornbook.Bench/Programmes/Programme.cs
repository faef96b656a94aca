using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Programmes;

/// <summary>A proposal for a show: where everything stands and how the amplifier is set for each demonstration, in the order wanted.</summary>
/// <param name="Items">The demonstrations that can be shown, in their order.</param>
/// <param name="Left">Those that cannot, and why.</param>
public sealed record Programme(IReadOnlyList<ProgrammeItem> Items, IReadOnlyList<LeftOut> Left)
{
    // The search reads a few settings of each demonstration in each arrangement; the curves at the end have every point.
    private const double SearchShare = 0.5;

    /// <summary>How often something is changed between demonstrations.</summary>
    public int Changes => Items.Sum(item => item.ToDo.Count);

    /// <summary>Proposes a programme in which each demonstration is heard best, with the fewest changes between them.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="wanted">The demonstrations in the order of the show; of this bench.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-].</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Programme Propose(
        BenchPlan plan, IReadOnlyList<Demonstration> wanted, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wanted);
        Scene scene = Scene.Of(plan);
        IReadOnlyList<Candidates> candidates = Candidates.Of(scene.Sketch(), wanted, share => progress?.Report(SearchShare * share), cancellation);
        IReadOnlyList<Choice> chosen = FewestChanges.Choose(Arrangement.Of(plan), [.. candidates.Where(c => c.Choices.Count > 0)]);
        Prediction[] predictions = Prediction.All(
            [.. chosen.Select(choice => (scene.With(choice.Bench), choice.Demonstration))],
            done => progress?.Report(SearchShare + ((1.0 - SearchShare) * done / chosen.Count)),
            cancellation);
        List<ProgrammeItem> items = [];
        BenchPlan before = plan;
        foreach ((Choice choice, Prediction prediction) in chosen.Zip(predictions))
        {
            Setting start = prediction.Curve.Points[0].Setting;
            items.Add(new ProgrammeItem(choice.Demonstration, choice.Bench, prediction, Preparation.Between(before, choice.Bench, start), Shortcomings.Of(choice)));
            before = Preparation.AfterShowing(choice.Bench, prediction.Curve.Points[^1].Setting);
        }

        return new Programme(items, [.. candidates.Where(c => c.Choices.Count == 0).Select(c => new LeftOut(c.Demonstration, c.Why))]);
    }
}

/// <summary>A demonstration that cannot be shown on a bench.</summary>
/// <param name="Demonstration">Which.</param>
/// <param name="Why">One sentence.</param>
public sealed record LeftOut(Demonstration Demonstration, string Why);
