using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Findings;

/// <summary>Whether each demonstration will be heard, and shows what it claims to show.</summary>
internal static class DemonstrationFindings
{
    /// <summary>Fewer just-noticeable steps than this are missed by half the room: limens differ by two between people.</summary>
    private const double FewSteps = 20.0;

    /// <summary>Share of a curve that may be clipped before the demonstration is about the clipping.</summary>
    private const double ClippedShare = 0.1;

    internal static IEnumerable<Finding> Of(Inspection bench) => bench.Predictions.SelectMany(p => Of(bench, p));

    private static IEnumerable<Finding> Of(Inspection bench, Prediction prediction) =>
    [
        .. Clipped(bench.Plan.Detection, prediction),
        .. Drowned(bench.Plan.Detection, prediction),
        .. Range(bench, prediction),
        .. ToneFindings.Detector(bench.Plan.Detection, prediction.Curve.Strongest.Reading.ReceivedPower, $"At the strongest of '{prediction.Demonstration.Name}'"),
        .. SweepFindings.Of(bench, prediction),
    ];

    private static IEnumerable<Finding> Clipped(DetectionChain chain, Prediction prediction)
    {
        Curve curve = prediction.Curve;
        IReadOnlyList<Stretch> clipped = Stretch.Where(curve, p => ChainSetting.IsAtCeiling(chain, p.Reading.Heard));
        if (clipped.Count == 0)
        {
            yield break;
        }

        int points = curve.Points.Count(p => ChainSetting.IsAtCeiling(chain, p.Reading.Heard));
        bool spoils = prediction.Demonstration is AntennaChangeDemonstration || points > ClippedShare * curve.Points.Count;
        yield return new Finding(spoils ? Severity.Spoils : Severity.Weakens, "demonstration-clipped",
            $"In '{prediction.Demonstration.Name}' the tone is clipped {InWords.Places(curve.Abscissa, clipped)}.",
            $"There the audience hears {InWords.Note(curve.Strongest.Reading.Heard.Tone)} whatever the wave does.",
            ChainSetting.SetGain(chain, curve.Points.Max(p => p.Reading.ReceivedPower)));
    }

    private static IEnumerable<Finding> Drowned(DetectionChain chain, Prediction prediction)
    {
        Curve curve = prediction.Curve;
        CurvePoint? needed = prediction.Demonstration switch
        {
            DistanceDemonstration or AntennaChangeDemonstration => curve.Weakest,
            _ => curve.Strongest,
        };
        double power = prediction.Demonstration is BeamWidthDemonstration ? needed.Reading.ReceivedPower / 2.0 : needed.Reading.ReceivedPower;
        if (chain.Hear(power).State == ToneState.Drowned)
        {
            IReadOnlyList<Stretch> drowned = Stretch.Where(curve, p => p.Reading.Heard.State == ToneState.Drowned);
            string where = drowned.Count > 0 ? InWords.Places(curve.Abscissa, drowned) : "at half power";
            bool spoils = prediction.Demonstration is not DistanceDemonstration || curve.Strongest.Reading.Heard.State == ToneState.Drowned;
            yield return new Finding(spoils ? Severity.Spoils : Severity.Weakens, "demonstration-drowned",
                $"In '{prediction.Demonstration.Name}' the signal is lost in the noise {where}.",
                "There it sounds as if nothing came.",
                ChainSetting.Steadier(chain, power));
        }
    }

    /// <summary>Whether a curve has enough steps of pitch for a room.</summary>
    internal static bool IsHeardToMove(Curve curve) => Hearing.StepsOf(curve) >= FewSteps;

    private static IEnumerable<Finding> Range(Inspection bench, Prediction prediction)
    {
        double steps = Hearing.StepsOf(prediction.Curve);
        if (!IsHeardToMove(prediction.Curve) && !prediction.Curve.Points.All(p => p.Reading.Heard.State == ToneState.Clipped))
        {
            yield return new Finding(steps < FewSteps / 4.0 ? Severity.Spoils : Severity.Weakens, "pitch-range-small",
                $"'{prediction.Demonstration.Name}' moves the pitch by {InWords.Steps(steps)} only.",
                "Much of the audience will not be sure that anything changed.",
                ChainSetting.MoreSteps(bench.Plan.Detection, prediction.Curve, bench.Predictions.Max(p => p.Curve.Strongest.Reading.ReceivedPower), FewSteps));
        }
    }
}
