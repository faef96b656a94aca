using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Beginnings;

/// <summary>Sets a draft so that nothing spoils it: the amplifier to what arrives, and only what can be heard among its demonstrations.</summary>
internal static class FirstSetting
{
    // A voice that wanders by more than this sounds unsteady [cents], as among the findings.
    private const double WanderCents = 30.0;

    // As slow as a tone may follow a hand [Hz].
    private const double LeastBandwidth = 1.0;

    /// <summary>Sets it.</summary>
    /// <param name="draft">With antennas and places.</param>
    /// <param name="set">The whole; null where something stands in its way.</param>
    internal static Obstacle? Set(FirstDraft draft, out FirstDraft? set)
    {
        set = null;
        if (Spoiling(draft).FirstOrDefault(finding => finding.Id == "edge-inside-keep-out") is { } unsafeEdge)
        {
            return new Obstacle(BenchQuestion.Power, $"{unsafeEdge.Wrong} Give at most {unsafeEdge.Mend!.NewText}, or take antennas of less gain or a larger table.");
        }

        FirstDraft[] candidates = [.. FirstDemonstration.Candidates(draft).SelectMany(ways => ways).Select(way => draft with { Shown = [way] })];
        FirstDraft heard = Amplified(draft with { KeepOut = KeepOutOf(draft.Plan) }, candidates);
        FirstDemonstration[] good = [.. FirstDemonstration.Candidates(draft)
            .Select(ways => ways.FirstOrDefault(way => !Spoiling(heard with { Shown = [way] }).Any()))
            .OfType<FirstDemonstration>()];
        FirstDraft whole = heard with { Shown = good };
        if (Spoiling(whole).FirstOrDefault() is { } left)
        {
            return new Obstacle(left.Id.Contains("drowned", StringComparison.Ordinal) ? BenchQuestion.Power : BenchQuestion.TableLength, $"{left.Wrong} {left.Consequence}");
        }

        set = whole;
        return null;
    }

    private static IEnumerable<Finding> Spoiling(FirstDraft draft) => BenchFindings.Of(draft.Plan).Where(finding => finding.Severity == Severity.Spoils);

    /// <summary>The gain at which the strongest wave of all demonstrations just fills the range, and a bandwidth at which the bench as it stands is steady.</summary>
    private static FirstDraft Amplified(FirstDraft draft, IReadOnlyList<FirstDraft> candidates)
    {
        Scene scene = Scene.Of(draft.Plan);
        double standing = scene.Read().ReceivedPower;
        double strongest = candidates
            .SelectMany(candidate => Curve.Of(scene.With(candidate.Plan), candidate.Plan.Demonstrations[0]).Points)
            .Select(point => point.Reading.ReceivedPower).Append(standing).Max();
        FirstDraft amplified = draft with { Gain = Math.Clamp(ChainSetting.GainFor(scene.Plan.Detection, strongest), DetectionFormat.Gain.Lowest, DetectionFormat.Gain.Highest) };
        double wander = amplified.Plan.Detection.Hear(standing) is { State: not ToneState.Drowned } heard ? heard.JitterCents : double.PositiveInfinity;
        return wander <= WanderCents ? amplified : amplified with { Bandwidth = Steady(amplified, standing) };
    }

    private static double Steady(FirstDraft draft, double power)
    {
        double bandwidth = draft.Bandwidth;
        bool Wanders(double at) => (draft with { Bandwidth = at }).Plan.Detection.Hear(power) is { State: ToneState.Drowned } or { JitterCents: > WanderCents };
        while (bandwidth > LeastBandwidth && Wanders(bandwidth))
        {
            bandwidth = Math.Max(LeastBandwidth, Math.Floor(bandwidth / 2.0));
        }

        return bandwidth;
    }

    private static double? KeepOutOf(BenchPlan plan) => ChosenLimit.Of(plan) is { } limit
        ? KeepOut.OnAxis(ExposureField.Of(Scene.Of(plan).Source, plan.Source.WorstCasePower), limit.PowerDensity(plan.Frequency))
        : null;
}
