using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Tabletop.Design;

namespace Hornbook.Tabletop.Safety;

/// <summary>How far to keep people from the source of a bench by every limit, what they get at the table, and the lines drawn.</summary>
public sealed record SafetyStudy
{
    /// <summary>More lines than this cannot be told apart.</summary>
    private const int MostLines = 4;

    /// <summary>By the most strictly limited first.</summary>
    public required IReadOnlyList<LimitDistance> Limits { get; init; }

    /// <summary>The one that the bench chooses; null where it is not known at its frequency.</summary>
    public required LimitDistance? Chosen { get; init; }

    public required IReadOnlyList<WatchedPlace> Places { get; init; }

    public required MouthExposure Mouth { get; init; }

    /// <summary>The same power in the open guide itself, without an antenna; the mouth's own for an open guide.</summary>
    public required MouthExposure OpenGuide { get; init; }

    /// <summary>Null where no limit is known at the frequency, or none is met anywhere.</summary>
    public required FigurePicture? Lines { get; init; }

    public static SafetyStudy Of(Scene scene, IProgress<double> progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(progress);
        BenchPlan plan = scene.Plan;
        ExposureField field = ExposureField.Of(scene.Source, plan.Source.WorstCasePower);
        LimitDistance[] limits = [.. LimitDistances.Of(field, new Part(progress, 0.6), cancellation).OrderBy(one => one.Density).ThenBy(one => one.Limit.Title, StringComparer.Ordinal)];
        LimitDistance? chosen = ChosenLimit.Of(plan) is { } limit ? limits.First(one => one.Limit == limit) : null;
        double[] drawn = Drawn(limits, chosen);
        FigurePicture? lines = drawn.Length == 0 ? null : FigurePicture.Of(KeepOutLinesFigure.Of(plan, field, drawn, cancellation));
        progress.Report(0.8);
        return new SafetyStudy
        {
            Limits = limits,
            Chosen = chosen,
            Places = WatchedPlace.Of(plan, field),
            Mouth = MouthExposure.Of(field),
            OpenGuide = scene.Source.Shape is OpenGuide ? MouthExposure.Of(field) : MouthExposure.Of(ExposureField.Of(Bare(scene), plan.Source.WorstCasePower)),
            Lines = lines,
        };
    }

    /// <summary>Whether a limit is one for a bench: in force, and for any source.</summary>
    public static bool Counts(ExposureLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.IsInForce && limit.Scope == LimitScope.AnySource;
    }

    private static Antenna Bare(Scene scene) => Antenna.At(new OpenGuide(scene.Source.Shape.Guide, scene.Source.Shape.Walls), scene.Plan.Frequency);

    /// <summary>The chosen limit's density first, then those of the others that count.</summary>
    private static double[] Drawn(LimitDistance[] limits, LimitDistance? chosen)
    {
        IEnumerable<double> others = limits.Where(one => Counts(one.Limit) && one.Anywhere > 0.0).Select(one => one.Density);
        return [.. (chosen is null ? others : others.Prepend(chosen.Density)).Distinct().Take(MostLines)];
    }

    private sealed class Part(IProgress<double> whole, double share) : IProgress<double>
    {
        public void Report(double value) => whole.Report(share * value);
    }
}
