using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What limits a demonstration, read off its curve.</summary>
internal static class CurveLimits
{
    /// <summary>A ripple smaller than this is not worth a word [dB].</summary>
    private const double SmallRippleDb = 0.05;

    internal static IReadOnlyList<Limit> Of(Scene scene, Curve curve) =>
    [
        .. Where(curve, LimitKind.Clipped, p => p.Reading.Heard.State == ToneState.Clipped, (_, places) =>
            $"The tone is clipped {places}: there a stronger wave sounds the same."),
        .. Where(curve, LimitKind.Drowned, p => p.Reading.Heard.State == ToneState.Drowned, (_, places) =>
            $"The signal is lost in the noise {places}."),
        .. NearZone(scene, curve),
        .. Ripple(scene, curve),
        .. Where(curve, LimitKind.Untrusted, p => p.Reading.Trust.Level == TrustLevel.Outside, (first, places) =>
            $"A guide only {places}. {first.Reading.Trust.Why}"),
        .. Where(curve, LimitKind.Untrusted, p => p.Reading.Trust.Level == TrustLevel.Rough, (_, places) =>
            $"Roughly known {places}: more than 20° off an axis the prediction is good to a decibel or two, and over 20 dB below antennas face to face to a few."),
        .. Detector(scene, curve),
    ];

    private static IEnumerable<Limit> NearZone(Scene scene, Curve curve) => Where(
        curve,
        LimitKind.NearZone,
        p => p.Setting.Distance < TextbookLink.FarZoneOf(scene, p.Setting),
        (first, places) => $"Mouth to mouth is less than 2D²/λ = {InWords.Length(TextbookLink.FarZoneOf(scene, first.Setting))} {places}: "
            + "the far-zone formulas do not hold there, and this curve does not use them.");

    private static IEnumerable<Limit> Ripple(Scene scene, Curve curve)
    {
        CurvePoint worst = curve.Points.MaxBy(p => p.Upper.Tone - p.Lower.Tone)!;
        double rippleDb = curve.Points.Max(p => p.Reading.RippleDb);
        return rippleDb < SmallRippleDb
            ? []
            : [new Limit(
                LimitKind.Ripple,
                [new Stretch(curve.Points[0].Setting, curve.Points[^1].Setting)],
                $"Standing waves between the mouths move the reading by up to ±{InWords.Decibels(rippleDb)}: {InWords.Places(curve.Abscissa, [new Stretch(worst.Setting, worst.Setting)])} "
                + $"the tone lies between {InWords.Frequency(worst.Lower.Tone)} and {InWords.Frequency(worst.Upper.Tone)}.")];
    }

    private static IEnumerable<Limit> Detector(Scene scene, Curve curve)
    {
        (double lowest, double highest) = scene.Plan.Detection.Detector.TrustedPower;
        return Where(
            curve,
            LimitKind.Detector,
            p => p.Reading.ReceivedPower > highest || (p.Reading.ReceivedPower < lowest && p.Reading.Heard.State != ToneState.Drowned),
            (_, places) => $"The detector's law is known from {InWords.Power(lowest)} to {InWords.Power(highest)} only, which is left {places}.");
    }

    private static IEnumerable<Limit> Where(Curve curve, LimitKind kind, Func<CurvePoint, bool> holds, Func<CurvePoint, string, string> sentence)
    {
        IReadOnlyList<Stretch> stretches = Stretch.Where(curve, holds);
        return stretches.Count == 0
            ? []
            : [new Limit(kind, stretches, sentence(curve.Points.First(holds), InWords.Places(curve.Abscissa, stretches)))];
    }
}
