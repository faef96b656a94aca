using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The keys that say where a thing is and how it is held.</summary>
internal static class PoseFormat
{
    /// <summary>The place.</summary>
    /// <param name="point">Which point of the thing: "the middle of its mouth".</param>
    /// <param name="example">Of x.</param>
    internal static KeyRule[] Place(string point, string example) =>
    [
        new("x", Coordinate(example), $"Along the bench, of {point}."),
        new("y", Coordinate("\"0 cm\""), "Across the bench, positive to the left.", "\"0 cm\""),
        new("z", Coordinate("\"25 cm\""), "Above the table top."),
    ];

    /// <summary>How it is held after it was turned.</summary>
    /// <param name="upright">What its roll of zero means.</param>
    internal static KeyRule[] Attitude(string upright) =>
    [
        new("tilt", Angle("\"0 deg\""), "Up, after the turn.", "\"0 deg\""),
        new("roll", Angle("\"0 deg\""), $"About its own axis; at 0 {upright}.", "\"0 deg\""),
    ];

    /// <summary>An angle.</summary>
    internal static QuantityRule Angle(string example) => new(Quantity.Angle, "-360 deg", "360 deg", example);

    private static QuantityRule Coordinate(string example) => new(Quantity.Length, "-20 m", "20 m", example);
}
