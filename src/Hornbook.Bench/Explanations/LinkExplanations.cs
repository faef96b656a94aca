using Hornbook.Bench.Demonstrations;

namespace Hornbook.Bench.Explanations;

/// <summary>From the source's guide to the receiver's.</summary>
internal static class LinkExplanations
{
    internal static Explanation Link(ExplainedBench bench)
    {
        double link = bench.Reading.Link;
        double passage = link / (bench.Reading.Mismatch * bench.Reading.OhmicEfficiency);
        return new Explanation(
            "The link",
            $"Of the power that goes into the source's antenna, {Share(link)} comes out of the receiver's.",
            "link = |¼ ⟨s, r⟩|² · (1 − |Γs|²)(1 − |Γr|²) · ηs ηr",
            [
                $"{Factor(link)} = {Factor(passage)} · {InWords.Rounded(bench.Reading.Mismatch, 4)} · {InWords.Rounded(bench.Reading.OhmicEfficiency, 4)}",
                $"10 log₁₀ {Factor(link)} = {Decibels(link)}",
                Beside(bench),
            ],
            [
                new("⟨s, r⟩", "the source's field on the receiver's currents, every near-zone term and every angle counted", $"at {InWords.Length(bench.Distance)}"),
                new("Γs, Γr", "what the antennas throw back into their guides", $"{InWords.Rounded(bench.Sending.Reflection, 2)}, {InWords.Rounded(bench.Receiving.Reflection, 2)}"),
                new("ηs ηr", "what their walls leave", InWords.Rounded(bench.Reading.OhmicEfficiency, 4)),
            ],
            bench.HasPanels
                ? "One passage from mouth to mouth and by way of the panels that stand, mouths at least a wavelength apart and within 60° of both axes."
                : "One passage from mouth to mouth, at least a wavelength apart and within 60° of both axes; nothing else on the table.",
            bench.Reading.Trust.Why,
            ["Harrington1961", "Friis1946"]);
    }

    internal static Explanation Received(ExplainedBench bench) => new(
        "The power received",
        "What the wave brings into the receiver's guide, before the detector.",
        "P = link · P₀",
        [
            $"{InWords.Power(bench.Reading.ReceivedPower)} = {Factor(bench.Reading.Link)} · {InWords.Power(bench.Source.Power)}",
            $"10 log₁₀ ({InWords.Power(bench.Reading.ReceivedPower)} / 1 mW) = {InWords.Rounded(Physics.Decibels.PowerToDbm(bench.Reading.ReceivedPower), 3)} dBm",
        ],
        [
            new("link", "power delivered over power sent", Decibels(bench.Reading.Link)),
            new("P₀", "power that the source's guide brings to its antenna, from the bench file", InWords.Power(bench.Source.Power)),
        ],
        "As the link does.",
        "As sure as the link, and as the power of the source was measured: a decibel there is a decibel here.",
        []);

    internal static Explanation Ripple(ExplainedBench bench)
    {
        string panels = bench.HasPanels ? " + 0.2 (Es + Er)" : string.Empty;
        return new Explanation(
            "The ripple",
            $"The wave goes to and fro between the mouths; every quarter wavelength ({InWords.Length(bench.Wavelength / 4.0)}) of distance it adds to the direct one or takes from it.",
            $"± 20 log₁₀ (1 + 0.01 + 0.2² min(1, As/λr) min(1, Ar/λr){panels})",
            [$"± {InWords.Rounded(bench.Reading.RippleDb, 2)} dB"],
            [
                new("As, Ar", "areas of the two mouths", $"{Area(bench.Sending.Shape)}, {Area(bench.Receiving.Shape)}"),
                new("λ", "wavelength", InWords.Length(bench.Wavelength)),
                new("r", "from mouth to mouth", InWords.Length(bench.Distance)),
                .. bench.HasPanels ? new ExplainedSymbol[] { new("Es, Er", "what the panels throw back into the antennas", "computed") } : [],
            ],
            "Between two mouths, and between mouths and panels. The tone stands somewhere in this band; where, nobody can say to a millimetre.",
            "An estimate of our own, fitted to a full-wave computation of facing horns (0.2 to 0.4 dB standard deviation): good to a factor of two.",
            []);
    }

    private static string Beside(ExplainedBench bench)
    {
        double friis = Physics.Links.Link.Friis(bench.Sending, bench.Receiving, bench.Distance);
        double errorDb = TextbookComparison.ErrorDb(friis, bench.Reading.Link);
        return $"Friis's formula for far antennas face to face would say {Decibels(friis)}: {InWords.Decibels(Math.Abs(errorDb))} too {(errorDb > 0.0 ? "much" : "little")} here";
    }

    private static string Share(double link) => link > 0.0 ? $"one part in {InWords.Rounded(1.0 / link, 2)}" : "nothing";

    private static string Factor(double ratio)
    {
        int exponent = ratio > 0.0 ? (int)Math.Floor(Math.Log10(ratio)) : 0;
        return exponent >= -2 ? InWords.Rounded(ratio, 3) : $"{InWords.Rounded(ratio * Math.Pow(10.0, -exponent), 3)}·10{Raised(exponent)}";
    }

    private static string Raised(int exponent) => string.Concat(InWords.Rounded(exponent, 3).Select(sign => sign is '−' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[sign - '0']));

    private static string Decibels(double ratio) => InWords.Decibels(Physics.Decibels.FromRatio(ratio));

    private static string Area(Physics.Antennas.AntennaShape shape) => $"{InWords.Rounded(1e4 * shape.MouthWidth * shape.MouthHeight, 3)} cm²";
}
