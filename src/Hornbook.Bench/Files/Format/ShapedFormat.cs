using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of metal that is made to gather waves: bent plates, dishes and zone plates.</summary>
internal static class ShapedFormat
{
    internal const string Upright = "upright";
    internal const string Across = "across";
    internal const string Open = "open";
    internal const string Closed = "closed";

    private static readonly KeyRule Diameter = new("diameter", Metres("\"300 mm\""), "Of its edge.");

    private static readonly KeyRule DishFocus = new("focal_length", Metres("\"100 mm\""), "From the middle of the dish to its focus.");

    private static readonly KeyRule Focus = new("focal_length", Metres("\"300 mm\""), "From the plate to where waves from far away meet; or else `from_source` and `to_receiver`.", "see `from_source`");

    private static readonly KeyRule FromSource = new("from_source", Metres("\"500 mm\""), "For a plate between two places: from the source to the plate.", "see `focal_length`");

    private static readonly KeyRule ToReceiver = new("to_receiver", Metres("\"400 mm\""), "For a plate between two places: from the plate to the receiver.", "see `focal_length`");

    /// <summary>A bent plate, besides its outline before it is bent.</summary>
    internal static KeyRule[] Bent { get; } =
    [
        new("radius", new QuantityRule(Quantity.Length, "5 mm", "20 m", "\"400 mm\""), "To which it is bent; its front is the hollow side."),
        new("bent_about", new ChoiceRule(Upright, Across), "The direction that stays straight: its upright, or that across it.", "\"upright\""),
    ];

    /// <summary>A dish; its place is that of the middle of the metal, and its front is the hollow side.</summary>
    internal static KeyRule[] Dish { get; } =
    [
        Diameter,
        DishFocus,
        new("hole_diameter", Metres("\"40 mm\""), "Of a round hole in its middle.", "no hole"),
    ];

    /// <summary>A zone plate, besides its outline.</summary>
    internal static KeyRule[] Zones { get; } =
    [
        new("zones", new CountRule(1, 200, "6"), "How many zones, open and closed together; the plate goes on beyond the last."),
        new("centre", new ChoiceRule(Open, Closed), "Whether its middle is open, and with it every other zone.", "\"open\""),
        Focus,
        FromSource,
        ToReceiver,
        new("cut_for", new QuantityRule(Quantity.Frequency, "1 GHz", "300 GHz", "\"10.525 GHz\""), "Frequency for which it was cut.", "the bench's"),
    ];

    /// <summary>One of these says where the waves meet.</summary>
    internal static Either FocusChoice { get; } = new(new KeySet(Focus), new KeySet(FromSource, ToReceiver));

    private static QuantityRule Metres(string example) => new(Quantity.Length, "5 mm", "20 m", example);
}
