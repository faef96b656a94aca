using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Explanations;

/// <summary>What the two antennas do by themselves.</summary>
internal static class AntennaExplanations
{
    internal static Explanation Gain(ExplainedBench bench) => new(
        "The gains",
        "How much more an antenna sends along its axis than one that sent the same everywhere would.",
        "G = (4π A/λ²) · e · η",
        [.. Each(bench, (end, a) => $"{end}: {Dbi(a.Gain)} = 10 log₁₀ ({InWords.Rounded(4.0 * Math.PI * Area(a) / (a.Wavelength * a.Wavelength), 3)} · {InWords.Rounded(a.ApertureEfficiency, 3)} · {InWords.Rounded(a.OhmicEfficiency, 4)})")],
        [
            new("A", "areas of the mouths", Both(bench, a => $"{InWords.Rounded(1e4 * Area(a), 3)} cm²")),
            new("λ", "wavelength", InWords.Length(bench.Wavelength)),
            new("e", "how well the mouth is used: from its currents, normalised to the power that they radiate", Both(bench, a => InWords.Rounded(a.ApertureEfficiency, 3))),
            new("η", "what the walls leave", Both(bench, a => InWords.Rounded(a.OhmicEfficiency, 4))),
            new("|Γ|²", "not in the gain: what is thrown back into the guide", Both(bench, a => InWords.Rounded(a.Reflection * a.Reflection, 2))),
        ],
        "Far away, on the axis. Nearer than 2D²/λ less of it is felt; the link counts that.",
        "Some tenths of a decibel for horns built to the millimetre; that of an open guide depends on its rim, which is fitted.",
        ["Balanis2016"]);

    internal static Explanation BeamWidth(ExplainedBench bench) => new(
        "The beam widths",
        "The full angle between the two directions in which half the power of the axis is sent.",
        "D(±½θ) = ½ D(0)",
        [.. Each(bench, (end, a) => $"{end}: {Width(a, PatternPlane.Electric)} along the electric field, {Width(a, PatternPlane.Magnetic)} across it")],
        [
            new("D", "power by direction, from the currents over the mouth", "computed"),
            new("rule of thumb", "about one radian times λ over the side of the mouth", Both(bench, a => $"{InWords.Angle(a.Wavelength / a.Shape.MouthHeight)} and {InWords.Angle(a.Wavelength / a.Shape.MouthWidth)}")),
        ],
        "Far away, up to 60° off the axis; beyond, the outside of the walls decides.",
        "A degree or so for horns. A receiver that is itself directive, or near, reads another width than this.",
        ["Balanis2016", "Ludwig1973"]);

    internal static Explanation FarZone(ExplainedBench bench) => new(
        "Where the far zone begins",
        "Farther away than this a mouth looks nearly like a point, and textbook formulas hold.",
        "r = 2 D²/λ",
        [.. Each(bench, (end, a) => $"{end}: 2 · ({InWords.Length(a.Shape.LargerSide)})² / {InWords.Length(a.Wavelength)} = {InWords.Length(a.FarDistance)}")],
        [
            new("D", "larger side of the mouth", Both(bench, a => InWords.Length(a.Shape.LargerSide))),
            new("λ", "wavelength", InWords.Length(bench.Wavelength)),
        ],
        "A convention: there the rim of the mouth is a sixteenth of a wavelength farther away than its middle.",
        "Nothing here is computed with it. At this distance a formula for far away is still wrong by some tenths of a decibel.",
        ["Balanis2016"]);

    private static IEnumerable<string> Each(ExplainedBench bench, Func<string, Antenna, string> say) =>
        [say($"source ({bench.Source.Antenna})", bench.Sending), say($"receiver ({bench.Receiver.Antenna})", bench.Receiving)];

    private static string Both(ExplainedBench bench, Func<Antenna, string> say) => $"{say(bench.Sending)}; {say(bench.Receiving)}";

    private static string Width(Antenna antenna, PatternPlane plane) =>
        BeamShape.Of(antenna, plane).HalfPowerWidth is double width ? InWords.Angle(width) : "never down to half";

    private static double Area(Antenna antenna) => antenna.Shape.MouthWidth * antenna.Shape.MouthHeight;

    private static string Dbi(double gain) => $"{InWords.Rounded(Physics.Decibels.FromRatio(gain), 3)} dBi";
}
