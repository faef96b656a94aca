using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Format;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Findings;

/// <summary>How the amplifier has to be set for a wave to be heard well.</summary>
internal static class ChainSetting
{
    /// <summary>Signal over noise with which a tone is taken to stand steady [-].</summary>
    private const double Steady = 3.0;

    /// <summary>Share of the range that the strongest wave should fill, so that nothing clips when it grows a little [-].</summary>
    private const double Filled = 0.9;

    /// <summary>The amplifier voltage above which a stronger wave is no longer heard [V]: the rail, or the end of the tone's range.</summary>
    internal static double Ceiling(DetectionChain chain) =>
        Math.Min(chain.Amplifier.UpperRail, Math.Max(chain.Tone.Voltage(chain.Tone.Highest), chain.Tone.Voltage(chain.Tone.Lowest)));

    /// <summary>Whether a clipped tone is held at the strong end of its range.</summary>
    internal static bool IsAtCeiling(DetectionChain chain, HeardTone heard) =>
        heard.State == ToneState.Clipped && chain.Amplifier.Unlimited(heard.DetectorVoltage) > Ceiling(chain);

    /// <summary>The gain at which a power just fills most of the range [-], to two digits; 0 where the offset alone clips.</summary>
    internal static double GainFor(DetectionChain chain, double power)
    {
        double room = Ceiling(chain) - chain.Amplifier.Offset;
        double gain = Filled * Math.Max(0.0, room) / Math.Max(chain.Detector.Voltage(power), double.Epsilon);
        return InWords.TwoDigitsDown(gain);
    }

    /// <summary>Turn the gain to where a power fills most of the range.</summary>
    internal static Mend SetGain(DetectionChain chain, double power)
    {
        double gain = GainFor(chain, power);
        string text = InWords.Rounded(gain, 2);
        return gain switch
        {
            <= 0.0 => new Mend("Set the amplifier's offset to 0 V: it alone reaches the end of the range.", "amplifier.offset", "0 V"),
            _ when gain < DetectionFormat.Gain.Lowest => new Mend("Put an attenuator before the detector: no amplifier has so little gain as this needs."),
            _ => new Mend($"Set the amplifier's gain to {text} (now {InWords.Rounded(chain.Amplifier.Gain, 3)}).", "amplifier.gain", text),
        };
    }

    /// <summary>More gain, or more of a tone for each volt: first as much as no demonstration is clipped by, then as much gain as this one bears.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="curve">What is heard.</param>
    /// <param name="loudest">The most that any demonstration receives [W].</param>
    /// <param name="enough">Just-noticeable steps that are wanted [-].</param>
    internal static Mend MoreSteps(DetectionChain chain, Curve curve, double loudest, double enough)
    {
        double gain = GainFor(chain, loudest);
        if (IsMore(chain.Amplifier, gain) && Steps(chain with { Amplifier = chain.Amplifier with { Gain = gain } }, curve) >= enough)
        {
            return SetGain(chain, loudest);
        }

        (ToneLaw tone, double slope, string unit) = Steeper(chain.Tone, chain.Hear(loudest).AmplifierVoltage);
        if (Steps(chain with { Tone = tone }, curve) >= enough)
        {
            string text = $"{InWords.Rounded(slope, 2)} {unit}";
            return new Mend($"Let the tone change by {text.Replace("/V", " for each volt", StringComparison.Ordinal)}.", "tone.slope", InWords.Typed(text));
        }

        double strongest = curve.Strongest.Reading.ReceivedPower;
        return IsMore(chain.Amplifier, GainFor(chain, strongest)) ? SetGain(chain, strongest) : new Mend("Let the tone change more with each volt, or begin lower.");
    }

    /// <summary>Whether a gain is more than an amplifier has, and one that it could have.</summary>
    private static bool IsMore(Amplifier amplifier, double gain) => gain > amplifier.Gain && gain <= DetectionFormat.Gain.Highest;

    private static double Steps(DetectionChain chain, Curve curve)
    {
        double[] tones = [.. curve.Points.Select(point => chain.Hear(point.Reading.ReceivedPower).Tone)];
        return PitchSteps.Between(tones.Min(), tones.Max());
    }

    /// <summary>The law whose tone is near the end of its range at a voltage, with its slope to two digits.</summary>
    private static (ToneLaw Law, double Slope, string Unit) Steeper(ToneLaw law, double voltage)
    {
        switch (law)
        {
            case LinearTone tone:
                double slope = Slope(tone.Slope, DetectionFormat.LinearSlope.HighestSi);
                return (tone with { Slope = slope }, slope, "Hz/V");
            case ExponentialTone tone:
                double octaves = Slope(tone.OctavesPerVolt, DetectionFormat.OctaveSlope.HighestSi);
                return (tone with { OctavesPerVolt = octaves }, octaves, "oct/V");
            default:
                throw new NotSupportedException($"{law.GetType().Name}: a tone law without a slope");
        }

        double Slope(double now, double steepest)
        {
            double end = now > 0.0 ? Filled * law.Highest : law.Lowest / Filled;
            double then = now * law.Voltage(end) / voltage;
            return Math.Abs(then) > Math.Abs(now) && double.IsFinite(then) ? Math.Sign(now) * InWords.TwoDigitsDown(Math.Min(Math.Abs(then), steepest)) : now;
        }
    }

    /// <summary>Narrow the bandwidth until a power stands clear of the noise, where that is still quick enough to follow a hand.</summary>
    internal static Mend Steadier(DetectionChain chain, double power)
    {
        double ratio = chain.Amplifier.Gain * chain.Detector.Voltage(power) / (Steady * chain.Noise);
        double bandwidth = chain.Amplifier.Bandwidth * ratio * ratio;
        string text = string.Create(CultureInfo.InvariantCulture, $"{InWords.Rounded(bandwidth, 2)} Hz");
        return bandwidth >= 1.0
            ? new Mend($"Narrow the amplifier's bandwidth to {text} (now {InWords.Frequency(chain.Amplifier.Bandwidth)}).", "amplifier.bandwidth", text)
            : new Mend($"Bring the ends nearer or use more gain of antenna: {InWords.Power(chain.Detector.Power(Steady * chain.Noise / chain.Amplifier.Gain))} must arrive, and {InWords.Power(power)} does.");
    }
}
