using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What the audience will hear of a demonstration, in one sentence.</summary>
internal static class Hearing
{
    internal static string Of(Scene scene, Demonstration demonstration, Curve curve, Evaluation evaluation) => (demonstration, evaluation) switch
    {
        (BeamWidthDemonstration d, BeamWidthEvaluation e) => BeamWidth(scene, d, e, curve),
        (AntennaChangeDemonstration, _) => AntennaChange(curve),
        (DistanceDemonstration, _) => Distance(scene, curve),
        (PolarisationDemonstration, _) => Polarisation(curve),
        _ => throw new ArgumentException($"nothing is known of how {demonstration.GetType().Name} sounds", nameof(demonstration)),
    };

    private static string BeamWidth(Scene scene, BeamWidthDemonstration demonstration, BeamWidthEvaluation evaluation, Curve curve)
    {
        string end = demonstration.Turned == BenchEnd.Source ? "source" : "receiver";
        CurvePoint peak = curve.Strongest;
        string half = evaluation.HalfPowerWidth is double width
            ? $", at half power ({InWords.Angle(width / 2.0)} to either side) {InWords.Tone(scene.Plan.Detection.Hear(peak.Reading.ReceivedPower / 2.0))}"
            : string.Empty;
        return $"As you turn the {end}, the tone is highest at {InWords.Angle(evaluation.PeakAt)}, {InWords.Tone(peak.Reading.Heard)}{half}, "
            + $"and at {Place(curve, curve.Weakest)} {InWords.Tone(curve.Weakest.Reading.Heard)}: {Steps(curve)} from the strongest to the weakest.";
    }

    private static string AntennaChange(Curve curve)
    {
        IEnumerable<string> heard = curve.Points.Select(p => $"with {Place(curve, p)} {InWords.Tone(p.Reading.Heard)}");
        return $"The tone is {InWords.Joined([.. heard])}: {Steps(curve)} between the weakest and the strongest.";
    }

    private static string Distance(Scene scene, Curve curve)
    {
        CurvePoint nearest = curve.Points.MinBy(p => p.Setting.At)!;
        CurvePoint farthest = curve.Points.MaxBy(p => p.Setting.At)!;
        double twice = 2.0 * nearest.Setting.At;
        string doubled = string.Empty;
        if (twice < farthest.Setting.At)
        {
            Setting there = nearest.Setting with { At = twice, Receiver = Course.OnAxis(nearest.Setting.Source, nearest.Setting.Receiver, twice) };
            doubled = $" over {InWords.Tone(Curve.PointOf(scene, there).Reading.Heard)} at twice that distance";
        }

        return $"As the receiver moves away, the tone falls from {InWords.Tone(nearest.Reading.Heard)} at {Place(curve, nearest)}{doubled} "
            + $"to {InWords.Tone(farthest.Reading.Heard)} at {Place(curve, farthest)}: {Steps(curve)}.";
    }

    private static string Polarisation(Curve curve) =>
        $"As you roll the receiver, the tone goes from {InWords.Tone(curve.Strongest.Reading.Heard)} at {Place(curve, curve.Strongest)} "
        + $"to {InWords.Tone(curve.Weakest.Reading.Heard)} at {Place(curve, curve.Weakest)}: {Steps(curve)}.";

    private static string Place(Curve curve, CurvePoint point) => InWords.Place(curve.Abscissa, point.Setting);

    private static string Steps(Curve curve) => InWords.Steps(StepsOf(curve));

    /// <summary>Just-noticeable steps between the highest and the lowest tone of a curve [-].</summary>
    internal static double StepsOf(Curve curve) => PitchSteps.Between(
        curve.Points.Min(p => p.Reading.Heard.Tone), curve.Points.Max(p => p.Reading.Heard.Tone));
}
