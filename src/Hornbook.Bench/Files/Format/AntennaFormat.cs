using Hornbook.Bench.Files.Quantities;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of an antenna.</summary>
internal static class AntennaFormat
{
    internal const string Pyramidal = "pyramidal horn";
    internal const string EPlane = "E-plane horn";
    internal const string HPlane = "H-plane horn";
    internal const string OpenEnd = "open guide";

    private static readonly KeyRule MouthWidth = new(
        "mouth_width", Size("\"94 mm\""), "Inside width of the mouth, in the H plane: across the electric field.");

    private static readonly KeyRule MouthHeight = new(
        "mouth_height", Size("\"79 mm\""), "Inside height of the mouth, in the E plane: along the electric field.");

    private static readonly KeyRule Length = new(
        "length", new QuantityRule(Quantity.Length, "1 mm", "5 m", "\"130 mm\""), "From the throat to the mouth, along the axis.");

    /// <summary>An antenna.</summary>
    internal static TableShape Antenna { get; } = new(
        "the antenna",
        new("guide", new WordOrTableRule(new ChoiceRule([.. GuideNames()]), new TableRule(Guide)), "The guide that feeds it: a standard size by name, or its inside dimensions."),
        new("walls", new ChoiceRule([.. Conductors.All.Select(metal => metal.Name)]), "What it is made of.", "\"brass\""),
        new("reflection", new RatioRule(0.0, 0.99, "0.08", Decibels: true), "Measured reflection seen from the guide, |Γ| or in dB.", "computed"))
    {
        Kind = new KeyRule("kind", new ChoiceRule(Pyramidal, EPlane, HPlane, OpenEnd), "What is built."),
        Variants =
        [
            new(Pyramidal, MouthWidth, MouthHeight, Length),
            new(EPlane, MouthHeight, Length),
            new(HPlane, MouthWidth, Length),
            new(OpenEnd),
        ],
    };

    private static TableShape Guide => new(
        "the guide",
        new("width", new QuantityRule(Quantity.Length, "0.5 mm", "50 cm", "\"22.86 mm\""), "Broad inner wall."),
        new("height", new QuantityRule(Quantity.Length, "0.2 mm", "50 cm", "\"10.16 mm\""), "Narrow inner wall."));

    /// <summary>The guide of most benches first, since it is the example.</summary>
    private static IEnumerable<string> GuideNames() => StandardGuides.All.Select(size => size.Name).OrderBy(name => name != "WR-90");

    private static QuantityRule Size(string example) => new(Quantity.Length, "1 mm", "2 m", example);
}
