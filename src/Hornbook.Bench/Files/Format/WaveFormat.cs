using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of the demonstrations of mirrors, fringes, shadows and foci.</summary>
internal static class WaveFormat
{
    private static readonly KeyRule Points = new("points", new CountRule(3, 2001, "121"), "How many settings are computed.", "121");

    private static readonly KeyRule Distance = new(
        "distance", new QuantityRule(Quantity.Length, "1 cm", "20 m", "\"60 cm\""), "From the middle of the panel to the receiver.", "as far as it stands");

    /// <summary>One for each kind.</summary>
    internal static IReadOnlyList<Variant> Variants { get; } =
    [
        new(DemonstrationFormat.Reflection,
            Panel("\"plate\"", "The plate that is put in and turned."),
            new KeyRule("incidence", new QuantityRule(Quantity.Angle, "-85 deg", "85 deg", "\"45 deg\""), "Between the wave and the plate's normal; positive turns the plate to the left."),
            Swing("from", "\"60 deg\"", "First direction of the receiver, seen from the plate, off that of the source."), Swing("to", "\"120 deg\"", "Last direction of the receiver."), Points, Distance),
        new(DemonstrationFormat.StandingWave,
            Panel("\"plate\"", "The plate that is put in, square to the beam, and moved."),
            new KeyRule("before", new QuantityRule(Quantity.Length, "5 mm", "5 m", "\"10 cm\""), "From the plate to the probe, which looks across the beam.", "\"10 cm\""),
            Shift("from", "\"0 mm\"", "First shift of the plate, away from the source."), Shift("to", "\"60 mm\"", "Last shift."), Points),
        new(DemonstrationFormat.Slits,
            Panel("\"two-slits\"", "The plate with upright slits that is put in."),
            Swing("from", "\"-25 deg\"", "First swing of the receiver about the plate's middle."), Swing("to", "\"25 deg\"", "Last swing."), Points, Distance),
        new(DemonstrationFormat.Edge,
            Panel("\"edge\"", "The plate that is put in and pushed across."),
            Shift("from", "\"15 cm\"", "First shift to its own left."), Shift("to", "\"-10 cm\"", "Last shift."), Points),
        new(DemonstrationFormat.Lloyd,
            Panel("\"floor\"", "The mirror that is put in and moved away along its normal; without one the table top, over which both ends are raised.", "none"),
            Shift("from", "\"-5 cm\"", "First shift."), Shift("to", "\"15 cm\"", "Last shift."), Points),
        new(DemonstrationFormat.ZonePlate,
            Panel("\"zones\"", "The zone plate that is put in."),
            Metres("from", "\"30 cm\"", "First distance from the plate to the receiver."), Metres("to", "\"90 cm\"", "Last distance."), Points),
        new(DemonstrationFormat.Dish,
            Panel("\"dish\"", "The dish that is put in."),
            Metres("from", "\"8 cm\"", "First distance from the middle of the dish to the receiver, which looks into it."), Metres("to", "\"18 cm\"", "Last distance."), Points),
    ];

    private static KeyRule Panel(string example, string meaning, string? unless = null) => new("panel", new PanelNameRule(example), meaning, unless);

    private static KeyRule Swing(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Angle, "-360 deg", "360 deg", example), meaning);

    private static KeyRule Shift(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Length, "-2 m", "2 m", example), meaning);

    private static KeyRule Metres(string name, string example, string meaning) =>
        new(name, new QuantityRule(Quantity.Length, "1 cm", "20 m", example), meaning);
}
