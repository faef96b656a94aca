using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What the audience will hear of a demonstration, in one sentence.</summary>
internal static class Hearing
{
    private const double Doubling = 2.0;

    /// <summary>The highest pitch that is counted in steps: what most people hear at all [Hz].</summary>
    private const double HighestHeard = 20e3;

    internal static string BeamWidth(Scene scene, BeamWidthDemonstration demonstration, BeamWidthEvaluation evaluation, Curve curve)
    {
        string end = demonstration.Turned == BenchEnd.Source ? "source" : "receiver";
        CurvePoint peak = curve.Strongest;
        string half = evaluation.HalfPowerWidth is double width
            ? $"{InWords.Tone(scene.Hear(peak.Reading.ReceivedPower / 2.0))} at half power, {InWords.Angle(width / 2.0)} to either side, and "
            : string.Empty;
        return $"As you turn the {end}, the tone {Goes(curve)} from {InWords.Tone(peak.Reading.Heard)} at {InWords.Angle(evaluation.PeakAt)} "
            + $"to {half}{At(curve, curve.Weakest)}: {Steps(curve)}.";
    }

    internal static string AntennaChange(Curve curve)
    {
        IEnumerable<string> heard = curve.Points.Select(p => $"{InWords.Tone(p.Reading.Heard)} with {Place(curve, p)}");
        return $"The tone is {InWords.Joined([.. heard])}: {Steps(curve)} between the weakest and the strongest.";
    }

    internal static string Distance(Scene scene, Curve curve)
    {
        CurvePoint nearest = curve.Points.MinBy(p => p.Setting.At)!;
        CurvePoint farthest = curve.Points.MaxBy(p => p.Setting.At)!;
        string over = farthest.Setting.At > 1.05 * Doubling * nearest.Setting.At
            ? $"over {InWords.Tone(TwiceAsFar(scene, nearest).Heard)} at twice that distance "
            : string.Empty;
        string twice = Math.Abs((farthest.Setting.At / nearest.Setting.At) - Doubling) < 0.01 ? ", twice as far" : string.Empty;
        return $"As the receiver moves away, the tone {Goes(curve)} from {At(curve, nearest)} {over}"
            + $"to {At(curve, farthest)}{twice}: {Steps(curve)}.";
    }

    private static Reading TwiceAsFar(Scene scene, CurvePoint nearest)
    {
        Setting setting = nearest.Setting;
        return scene.Read(setting.Source, Moves.OnAxis(setting.Source, setting.Receiver, Doubling * setting.At));
    }

    internal static string Polarisation(Curve curve) =>
        $"As you roll the receiver, the tone {Goes(curve)} from {At(curve, curve.Strongest)} "
        + $"to {At(curve, curve.Weakest)}: {Steps(curve)}.";

    /// <summary>Where the tone goes as the wave weakens: a tone law may run either way.</summary>
    internal static string Goes(Curve curve) =>
        curve.Strongest.Reading.Heard.Tone >= curve.Weakest.Reading.Heard.Tone ? "falls" : "rises";

    /// <summary>"443 Hz (A4) at 20 cm": the tone at a point, and where that is.</summary>
    internal static string At(Curve curve, CurvePoint point) => $"{InWords.Tone(point.Reading.Heard)} at {Place(curve, point)}";

    /// <summary>"between the strongest, as at …, and the weakest, as at …": of a tone that comes and goes.</summary>
    internal static string Between(Curve curve) =>
        $"between {InWords.Tone(curve.Strongest.Reading.Heard)}, as at {Place(curve, curve.Strongest)}, "
        + $"and {InWords.Tone(curve.Weakest.Reading.Heard)}, as at {Place(curve, curve.Weakest)}: {Steps(curve)}";

    internal static string Place(Curve curve, CurvePoint point) => InWords.Place(curve.Abscissa, point.Setting);

    internal static string Steps(Curve curve) => InWords.Steps(StepsOf(curve));

    /// <summary>Just-noticeable steps between the highest and the lowest tone of a curve [-].</summary>
    internal static double StepsOf(Curve curve) => PitchSteps.Between(
        Math.Min(HighestHeard, curve.Points.Min(p => p.Reading.Heard.Tone)), Math.Min(HighestHeard, curve.Points.Max(p => p.Reading.Heard.Tone)));
}
