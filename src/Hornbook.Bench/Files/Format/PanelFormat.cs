using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of a panel.</summary>
internal static class PanelFormat
{
    internal const string MetalPlate = "metal plate";
    internal const string StripGrid = "strip grid";
    internal const string WireGrid = "wire grid";
    internal const string Sheet = "sheet";
    internal const string LayeredSheet = "layered sheet";
    internal const string HalfMirror = "half mirror";
    internal const string Film = "film";
    internal const string Absorber = "absorber";
    internal const string BentPlate = "bent plate";
    internal const string Dish = "dish";
    internal const string ZonePlate = "zone plate";

    private static readonly KeyRule Period = new(
        "period", new QuantityRule(Quantity.Length, "0.1 mm", "20 cm", "\"5 mm\""), "From the middle of one strip or wire to the middle of the next.");

    private static readonly KeyRule StripWidth = new(
        "strip_width", new QuantityRule(Quantity.Length, "1 µm", "20 cm", "\"2.5 mm\""), "Width of the metal; from 1 to 99 % of the period.");

    private static readonly KeyRule Strips = new(
        "strips", PoseFormat.Angle("\"45 deg\""), "How the strips lie in it: from its upright, in the sense of a roll.", "\"0 deg\"");

    private static readonly KeyRule Board = new(
        "board", MaterialFormat.Board, "What the strips are on: they are on its front face, and a panel that is flipped shows the other.", "free strips, in air");

    private static readonly KeyRule WireDiameter = new(
        "wire_diameter", new QuantityRule(Quantity.Length, "1 µm", "8 cm", "\"0.5 mm\""), "Thickness of the wire; from 0.1 to 40 % of the period.");

    private static readonly KeyRule Wires = new(
        "wires", PoseFormat.Angle("\"45 deg\""), "How the wires lie in it: from its upright, in the sense of a roll.", "\"0 deg\"");

    private static readonly KeyRule Material = new("material", MaterialFormat.Material, "What it is made of: a material by name, or its permittivity and loss.");

    private static readonly KeyRule Thickness = new("thickness", MaterialFormat.Thickness("\"3 mm\""), "From face to face.");

    private static readonly KeyRule Layers = new(
        "layers",
        new ListRule(new TableRule(MaterialFormat.Layer), 1, 20, "[{ material = \"glass\", thickness = \"4 mm\" }, { material = \"air\", thickness = \"12 mm\" }]"),
        "From its back face to its front face.");

    private static readonly KeyRule MirrorReflection = new(
        "reflection", new RatioRule(0.01, 0.99, "0.7071", Decibels: true), "What it throws back at right angles, |R| or in dB; the rest passes.", "0.7071");

    private static readonly KeyRule Resistance = new(
        "resistance", new QuantityRule(Quantity.Resistance, "1 ohm", "1 Mohm", "\"377 ohm\""), "From side to side of a square of it, whatever the size of the square.");

    private static readonly KeyRule Reflection = new(
        "reflection", new RatioRule(0.0, 1.0, "\"-20 dB\"", Decibels: true), "What it is rated to throw back at right angles, |R| or in dB.");

    private static readonly KeyRule Transmission = new(
        "transmission", new RatioRule(0.0, 1.0, "\"-30 dB\"", Decibels: true), "What it is rated to let through at right angles, |T| or in dB; 0 with a metal back.", "0");

    /// <summary>A panel.</summary>
    internal static TableShape Panel { get; } = new(
        "the panel",
        [
            new("aside", new TruthRule("true"), "Whether it lies aside: then it does nothing, and its place is where it will be put in.", "false"),
            .. PoseFormat.Place("its middle", "\"70 cm\""),
            new("turn", PoseFormat.Angle("\"0 deg\""), "About the vertical, positive to the left; at 0 its front looks along the bench.", "\"0 deg\""),
            .. PoseFormat.Attitude("its upright stands upright"),
        ])
    {
        Kind = new KeyRule("kind", new ChoiceRule(MetalPlate, StripGrid, WireGrid, Sheet, LayeredSheet, HalfMirror, Film, Absorber, BentPlate, Dish, ZonePlate), "What it is."),
        Variants =
        [
            Flat(MetalPlate, OutlineFormat.Openings),
            Flat(StripGrid, Period, StripWidth, Strips, Board),
            Flat(WireGrid, Period, WireDiameter, Wires),
            Flat(Sheet, Material, Thickness),
            Flat(LayeredSheet, Layers),
            Flat(HalfMirror, MirrorReflection),
            Flat(Film, Resistance),
            Flat(Absorber, Reflection, Transmission, Thickness),
            Flat(BentPlate, [.. OutlineFormat.Openings, .. ShapedFormat.Bent]),
            new(Dish, ShapedFormat.Dish),
            Flat(ZonePlate, ShapedFormat.Zones) with { Choices = [OutlineFormat.OutlineChoice, ShapedFormat.FocusChoice] },
        ],
    };

    /// <summary>A flat panel: any outline, and its own keys.</summary>
    private static Variant Flat(string word, params IReadOnlyList<KeyRule> keys) => new(word, [.. OutlineFormat.Outline, .. keys])
    {
        Choices = [OutlineFormat.OutlineChoice],
    };
}
