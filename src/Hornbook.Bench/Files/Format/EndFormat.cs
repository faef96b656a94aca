using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys of the two ends of the bench.</summary>
internal static class EndFormat
{
    private const string Mouth = "the middle of its mouth";

    /// <summary>The sending end.</summary>
    internal static TableShape Source { get; } = new(
        "the source",
        [
            Antenna("\"large-horn\""),
            new("power", Power("\"12 mW\""), "Power that the guide brings to the antenna."),
            new("worst_case_power", Power("\"20 mW\""), "The most that the source can give; exposure is computed with it.", "the power"),
            .. PoseFormat.Place(Mouth, "\"20 cm\""),
            new("turn", PoseFormat.Angle("\"0 deg\""), "About the vertical, positive to the left; 0 looks along the bench.", "\"0 deg\""),
            .. PoseFormat.Attitude("the electric field stands upright"),
        ]);

    /// <summary>The receiving end.</summary>
    internal static TableShape Receiver { get; } = new(
        "the receiver",
        [
            Antenna("\"probe\""),
            .. PoseFormat.Place(Mouth, "\"1 m\""),
            new("turn", PoseFormat.Angle("\"180 deg\""), "About the vertical, positive to the left; 180 looks back along the bench."),
            .. PoseFormat.Attitude("the electric field stands upright"),
        ]);

    private static KeyRule Antenna(string example) => new("antenna", new AntennaNameRule(example), "Name of its antenna.");

    private static QuantityRule Power(string example) => new(Quantity.Power, "1 nW", "100 W", example);
}
