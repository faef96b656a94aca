using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the tone of the bench as it stands can be heard for what it is.</summary>
internal static class ToneFindings
{
    /// <summary>Wander of the pitch from which it is heard as unsteady [cents]; a semitone is 100.</summary>
    private const double WanderCents = 30.0;

    private const string CalibrateOrAttenuate = "Calibrate the detector at that power, or put an attenuator before it.";

    internal static IEnumerable<Finding> Of(Inspection bench) =>
        [.. State(bench.Plan.Detection, bench.Reading.Heard, bench.Reading.ReceivedPower), .. Detector(bench.Plan.Detection, bench.Reading.ReceivedPower, "As it stands", highest => Weaker(bench, highest))];

    private static IEnumerable<Finding> State(DetectionChain chain, HeardTone heard, double power) => heard.State switch
    {
        ToneState.Clipped when ChainSetting.IsAtCeiling(chain, heard) => [new(Severity.Spoils, "tone-clipped",
            $"As it stands the tone is clipped at {InWords.Note(heard.Tone)}.",
            "A stronger wave sounds the same.",
            ChainSetting.SetGain(chain, power))],
        ToneState.Clipped => [new(Severity.Weakens, "tone-at-bottom",
            $"As it stands the tone is held at the weak end of its range, {InWords.Note(heard.Tone)}.",
            "A weaker wave sounds the same, and so does a somewhat stronger one.",
            new Mend("Set the amplifier's offset to 0 V and the tone at zero volts within its range.", "amplifier.offset", "0 V"))],
        ToneState.Drowned => [new(Severity.Spoils, "tone-drowned",
            $"As it stands the signal ({InWords.Power(power)} received) is smaller than the noise (that of {InWords.Power(chain.WeakestPower)}).",
            "It sounds as if nothing came.",
            ChainSetting.Steadier(chain, power))],
        _ when heard.JitterCents > WanderCents => [new(Severity.Weakens, "tone-wanders",
            $"As it stands noise makes the pitch wander by {InWords.Rounded(heard.JitterCents, 2)} cents rms.",
            "The tone sounds unsteady; a semitone is 100 cents.",
            Narrower(chain, heard.JitterCents))],
        _ => [],
    };

    /// <summary>The law of the detector, where it is used outside of what is known of it.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="power">What it gets [W].</param>
    /// <param name="when">When it gets that.</param>
    /// <param name="weaker">The move that lets it get no more than so much [W], where one is looked for.</param>
    internal static IEnumerable<Finding> Detector(DetectionChain chain, double power, string when, Func<double, Mend>? weaker = null)
    {
        (double lowest, double highest) = chain.Detector.TrustedPower;
        if (power > highest)
        {
            yield return new Finding(Severity.Weakens, "detector-beyond-law",
                $"{when} the detector gets {InWords.Power(power)}; its law is known up to {InWords.Power(highest)}.",
                "Volts and hertz are extrapolated, and the diode may suffer.",
                weaker?.Invoke(highest) ?? new Mend(CalibrateOrAttenuate));
        }
        else if (power < lowest && chain.Hear(power).State != ToneState.Drowned)
        {
            yield return new Finding(Severity.Note, "detector-below-law",
                $"{when} the detector gets {InWords.Power(power)}; its law is known from {InWords.Power(lowest)} up.",
                "Volts and hertz are extrapolated.",
                new Mend("Calibrate the detector at weaker waves."));
        }
    }

    private static Mend Weaker(Inspection bench, double highest) => Rearranging.Farther(
        bench,
        moved => bench.Scene.Read(moved.Source, moved.Receiver).ReceivedPower <= highest,
        $"; or {char.ToLowerInvariant(CalibrateOrAttenuate[0])}{CalibrateOrAttenuate[1..]}",
        CalibrateOrAttenuate);

    private static Mend Narrower(DetectionChain chain, double jitterCents)
    {
        double share = WanderCents / jitterCents;
        string text = $"{InWords.Rounded(chain.Amplifier.Bandwidth * share * share, 2)} Hz";
        return new Mend($"Narrow the amplifier's bandwidth to {text} (now {InWords.Frequency(chain.Amplifier.Bandwidth)}).", "amplifier.bandwidth", text);
    }
}
