using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of the two ends of the bench.</summary>
internal static class EndFormat
{
    /// <summary>The sending end.</summary>
    internal static TableShape Source { get; } = new(
        "the source",
        [
            Antenna("\"large-horn\""),
            new("power", Power("\"12 mW\""), "Power that the guide brings to the antenna."),
            new("worst_case_power", Power("\"20 mW\""), "The most that the source can give; exposure is computed with it.", "the power"),
            .. Place("\"20 cm\""),
            new("turn", Angle("\"0 deg\""), "About the vertical, positive to the left; 0 looks along the bench.", "\"0 deg\""),
            .. Attitude,
        ]);

    /// <summary>The receiving end.</summary>
    internal static TableShape Receiver { get; } = new(
        "the receiver",
        [
            Antenna("\"probe\""),
            .. Place("\"1 m\""),
            new("turn", Angle("\"180 deg\""), "About the vertical, positive to the left; 180 looks back along the bench."),
            .. Attitude,
        ]);

    private static KeyRule[] Attitude =>
    [
        new("tilt", Angle("\"0 deg\""), "Up, after the turn.", "\"0 deg\""),
        new("roll", Angle("\"0 deg\""), "About its own axis; at 0 the electric field stands upright.", "\"0 deg\""),
    ];

    private static KeyRule Antenna(string example) => new("antenna", new AntennaNameRule(example), "Name of its antenna.");

    private static KeyRule[] Place(string example) =>
    [
        new("x", Coordinate(example), "Along the bench, of the middle of its mouth."),
        new("y", Coordinate("\"0 cm\""), "Across the bench, positive to the left.", "\"0 cm\""),
        new("z", Coordinate("\"25 cm\""), "Above the table top."),
    ];

    private static QuantityRule Coordinate(string example) => new(Quantity.Length, "-20 m", "20 m", example);

    private static QuantityRule Angle(string example) => new(Quantity.Angle, "-360 deg", "360 deg", example);

    private static QuantityRule Power(string example) => new(Quantity.Power, "1 nW", "100 W", example);
}
