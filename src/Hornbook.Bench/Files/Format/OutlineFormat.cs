using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys that say how large a flat panel is and what is cut out of it; places are from its middle, in its own frame.</summary>
internal static class OutlineFormat
{
    private const string Otherwise = "see `width`";

    private static readonly KeyRule[] Middle =
    [
        new("y", Coordinate("\"0 cm\""), "Of its middle: from the middle of the panel to the left of one who looks where its front looks.", "\"0 cm\""),
        new("z", Coordinate("\"5 cm\""), "Of its middle: from the middle of the panel along its upright.", "\"0 cm\""),
    ];

    private static readonly KeyRule Angle = new(
        "angle", PoseFormat.Angle("\"90 deg\""), "How it lies: from the upright of the panel, in the sense of a roll.", "\"0 deg\"");

    private static readonly KeyRule Width = new("width", Size("\"300 mm\""), "Across, at right angles to its upright; with `height`, or else a `diameter` or `corners`.", "see `diameter`");

    private static readonly KeyRule Height = new("height", Size("\"300 mm\""), "Along its upright.", Otherwise);

    private static readonly KeyRule Diameter = new("diameter", Size("\"300 mm\""), "Of a round one.", Otherwise);

    private static readonly KeyRule Corners = new(
        "corners",
        new ListRule(new TableRule(Corner), 3, 200, "[{ y = \"-10 cm\", z = \"0 cm\" }, { y = \"10 cm\", z = \"0 cm\" }, { y = \"0 cm\", z = \"20 cm\" }]"),
        "Of any outline with straight sides, in order.",
        Otherwise);

    private static readonly KeyRule HoleWidth = new("width", Size("\"30 mm\""), "Of a hole with four corners; with `height`, or else a `diameter`.", "see `diameter`");

    private static readonly KeyRule HoleHeight = new("height", Size("\"30 mm\""), "Of a hole with four corners.", Otherwise);

    private static readonly KeyRule HoleDiameter = new("diameter", Size("\"30 mm\""), "Of a round hole.", Otherwise);

    /// <summary>The outline.</summary>
    internal static KeyRule[] Outline { get; } = [Width, Height, Diameter, Corners];

    /// <summary>One of these says the outline.</summary>
    internal static Either OutlineChoice { get; } = new(new KeySet(Width, Height), new KeySet(Diameter), new KeySet(Corners));

    /// <summary>What is cut out of it.</summary>
    internal static KeyRule[] Openings { get; } =
    [
        new("slits", new TableRule(Slits), "Slits side by side about its middle.", "none"),
        new("holes", new ListRule(new TableRule(Hole), 0, 200, "[{ diameter = \"30 mm\" }]"), "Holes, round or with four corners.", "none"),
        new("rings", new ListRule(new TableRule(Ring), 0, 50, "[{ inner_diameter = \"40 mm\", outer_diameter = \"60 mm\" }]"), "Openings between two circles about its middle; what is inside the inner one stays.", "none"),
    ];

    private static TableShape Corner => new(
        "the corner",
        new("y", Coordinate("\"-10 cm\""), "From the middle of the panel to the left of one who looks where its front looks."),
        new("z", Coordinate("\"20 cm\""), "From the middle of the panel along its upright."));

    private static TableShape Slits => new(
        "the slits",
        new("count", new CountRule(1, 50, "2"), "How many."),
        new("width", Size("\"15 mm\""), "Of each."),
        new("length", Size("\"200 mm\""), "Of each."),
        new("spacing", Size("\"70 mm\""), "From the middle of one to the middle of the next; needed for two and more.", "one slit"),
        Angle);

    private static TableShape Hole => new("the hole", [HoleWidth, HoleHeight, HoleDiameter, .. Middle, Angle])
    {
        Choices = [new Either(new KeySet(HoleWidth, HoleHeight), new KeySet(HoleDiameter))],
    };

    private static TableShape Ring => new(
        "the ring",
        new("inner_diameter", Size("\"40 mm\""), "Of the inner circle."),
        new("outer_diameter", Size("\"60 mm\""), "Of the outer circle."));

    private static QuantityRule Size(string example) => new(Quantity.Length, "1 mm", "3 m", example);

    private static QuantityRule Coordinate(string example) => new(Quantity.Length, "-3 m", "3 m", example);
}
