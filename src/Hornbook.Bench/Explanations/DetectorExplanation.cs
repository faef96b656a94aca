using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Explanations;

/// <summary>From power in the guide to volts.</summary>
internal static class DetectorExplanation
{
    internal static Explanation Of(ExplainedBench bench)
    {
        IDetectorLaw detector = bench.Plan.Detection.Detector;
        (string formula, IReadOnlyList<ExplainedSymbol> symbols, string[] sources) = Law(detector);
        string power = InWords.Power(bench.Reading.ReceivedPower), volts = Volts(bench.Reading.Heard.DetectorVoltage);
        return new Explanation(
            "The detector",
            "A crystal lets the current of the wave through one way better than the other: what is left is a steady voltage.",
            formula,
            [$"V({power}) = {volts}", $"four times the power would give {InWords.Rounded(Fourfold(bench), 3)} times the volts: 4 where the law is square, 2 where it is linear"],
            [new("P", "power in the receiver's guide", power), .. symbols],
            Holds(detector.TrustedPower),
            "As good as its calibration; crystals of one type differ by a decibel or two, and warmth shifts them.",
            sources);
    }

    internal static string Volts(double volts) => Math.Abs(volts) switch
    {
        0.0 => "0 V",
        >= 0.1 => $"{InWords.Rounded(volts, 3)} V",
        >= 1e-4 => $"{InWords.Rounded(1e3 * volts, 3)} mV",
        _ => $"{InWords.Rounded(1e6 * volts, 3)} µV",
    };

    private static double Fourfold(ExplainedBench bench)
    {
        IDetectorLaw detector = bench.Plan.Detection.Detector;
        double power = bench.Reading.ReceivedPower;
        return power > 0.0 ? detector.Voltage(4.0 * power) / detector.Voltage(power) : 4.0;
    }

    private static string Holds((double Lowest, double Highest) trusted) => trusted.Lowest > 0.0
        ? $"From {InWords.Power(trusted.Lowest)} to {InWords.Power(trusted.Highest)}."
        : $"Up to {InWords.Power(trusted.Highest)}.";

    private static (string Formula, IReadOnlyList<ExplainedSymbol> Symbols, string[] Sources) Law(IDetectorLaw detector) => detector switch
    {
        SquareDetector d => ("V = γ P", [Sensitivity(d)], []),
        PowerLawDetector d => ("V = γ P₁ (P/P₁)^m",
            [Sensitivity(d), new("m", "exponent", InWords.Rounded(d.Exponent, 3)), new("P₁", "where γ was measured", InWords.Power(d.ReferencePower))], []),
        JunctionDetector d => ("V = Vt ln I₀(2 √(γP/Vt))", [Sensitivity(d), new("I₀", "modified Bessel function: the mean of a junction's exponential over a swing", "–")], ["HarrisonLePolozec1994"]),
        DiodeDetector d => ("ln(1 + V/(R_L I_s)) + [1 + (R_g + R_s)/R_L] V/V_t = ln I₀(√(8 R_g P)/V_t) − R_s I_s/V_t",
            [new("R_g, R_L", "resistances before and behind the diode", $"{InWords.Rounded(d.SourceResistance, 3)} Ω, {InWords.Rounded(d.LoadResistance, 3)} Ω")], ["HarrisonLePolozec1994"]),
        _ => ("a smooth curve through the calibration points", [], ["FritschCarlson1980"]),
    };

    private static ExplainedSymbol Sensitivity(MeasuredSensitivity d) =>
        new("γ", "volts for each watt, for weak waves", $"{InWords.Rounded(1e-3 * d.Sensitivity, 3)} mV/µW");
}
