using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Explanations;

/// <summary>From volts to what the ear tells apart.</summary>
internal static class ToneExplanations
{
    internal static Explanation Amplifier(ExplainedBench bench)
    {
        (Amplifier amplifier, HeardTone heard) = (bench.Plan.Detection.Amplifier, bench.Reading.Heard);
        return new Explanation(
            "The amplifier",
            "It makes the detector's volts large enough for the tone, and can give no more than its rails.",
            "U = U₀ + G V, held between the rails",
            [$"{Volts(heard.AmplifierVoltage)} = {Volts(amplifier.Offset)} + {InWords.Rounded(amplifier.Gain, 4)} · {Volts(heard.DetectorVoltage)}"],
            [
                new("G", "gain", InWords.Rounded(amplifier.Gain, 4)),
                new("U₀", "offset at the output", Volts(amplifier.Offset)),
                new("rails", "lowest and highest output", $"{Volts(amplifier.LowerRail)}, {Volts(amplifier.UpperRail)}"),
                new("σ", "rms noise at the output, G √[(4kT R_v + e_n²) B]", Volts(heard.AmplifierNoise)),
            ],
            "Slow changes, within its bandwidth.",
            "As good as gain and offset were measured.",
            ["Nyquist1928"]);
    }

    internal static Explanation Tone(ExplainedBench bench)
    {
        (ToneLaw law, HeardTone heard) = (bench.Plan.Detection.Tone, bench.Reading.Heard);
        (string formula, string slope) = law switch
        {
            LinearTone linear => ("f = f₀ + s U", $"{InWords.Rounded(linear.Slope, 3)} Hz/V"),
            ExponentialTone exponential => ("f = f₀ · 2^(s U)", $"{InWords.Rounded(exponential.OctavesPerVolt, 3)} octaves/V"),
            _ => ("f(U)", "–"),
        };
        return new Explanation(
            "The tone",
            "The converter turns volts into pitch, so that the ear can follow the wave.",
            $"{formula}, held between the lowest and the highest",
            [$"f({Volts(heard.AmplifierVoltage)}) = {InWords.Note(heard.Tone)}", $"noise makes it wander by {InWords.Rounded(heard.JitterCents, 2)} cents rms"],
            [
                new("f₀", "tone at zero volts", InWords.Frequency(law.AtZero)),
                new("s", "slope", slope),
                new("U", "volts after the amplifier", Volts(heard.AmplifierVoltage)),
                new("range", "lowest and highest tone", $"{InWords.Frequency(law.Lowest)}, {InWords.Frequency(law.Highest)}"),
            ],
            "Between the lowest and the highest tone of the converter.",
            "As good as the converter's two settings. Notes are those of equal temperament on A4 = 440 Hz.",
            []);
    }

    internal static Explanation Steps(ExplainedBench bench)
    {
        double tone = Math.Min(bench.Reading.Heard.Tone, 20e3);
        return new Explanation(
            "Just-noticeable steps",
            "How many changes of pitch, each the smallest that is heard, fit between two tones.",
            "steps = ∫ df / DLF(f),   log₁₀ DLF = 0.026 √f − 0.533",
            [$"DLF({InWords.Frequency(tone)}) = {InWords.Rounded(PitchSteps.DifferenceLimen(tone), 2)} Hz"],
            [new("DLF", "smallest difference of two pure tones that is heard", $"{InWords.Rounded(PitchSteps.DifferenceLimen(tone), 2)} Hz at {InWords.Frequency(tone)}")],
            "Pure tones from 200 Hz to 8 kHz, moderately loud, one after the other.",
            "People differ by a factor of two; a slow glide needs a larger change to be noticed.",
            ["WierJesteadtGreen1977"]);
    }

    private static string Volts(double volts) => DetectorExplanation.Volts(volts);
}
