using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;

namespace Hornbook.Bench.Files.Editing;

/// <summary>One value of a bench file to be changed.</summary>
public sealed record BenchChange
{
    private BenchChange(string key) => Key = key;

    /// <summary>The key with its tables: "source.x", "antennas.large-horn.length", "demonstrations.beam-width.from".</summary>
    public string Key { get; }

    /// <summary>What to write, without quotes; null where <see cref="Value"/> is given.</summary>
    public string? Text { get; private init; }

    /// <summary>The new value in SI, to be written in the unit that the file uses there; null where <see cref="Text"/> is given.</summary>
    public double? Value { get; private init; }

    /// <summary>A key set to a text, such as "35 cm" or the name of an antenna.</summary>
    public static BenchChange ToText(string key, string text)
    {
        ArgumentException.ThrowIfNullOrEmpty(key);
        ArgumentNullException.ThrowIfNull(text);
        return new BenchChange(key) { Text = text };
    }

    /// <summary>A key set to a value in SI; it is written in the unit that the file uses there, rounded to 0.1 mm, 0.1° or six digits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static BenchChange ToValue(string key, double value)
    {
        ArgumentException.ThrowIfNullOrEmpty(key);
        return double.IsFinite(value)
            ? new BenchChange(key) { Value = value }
            : throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"{key} = {value}; must be finite"));
    }

    /// <summary>One end of the bench put in another pose; only what differs from the file is written.</summary>
    public static IReadOnlyList<BenchChange> ToPose(BenchEnd end, Pose pose)
    {
        string table = end == BenchEnd.Source ? "source" : "receiver";
        return
        [
            ToValue($"{table}.x", pose.Position.X), ToValue($"{table}.y", pose.Position.Y), ToValue($"{table}.z", pose.Position.Z),
            ToValue($"{table}.turn", pose.Turn), ToValue($"{table}.tilt", pose.Tilt), ToValue($"{table}.roll", pose.Roll),
        ];
    }
}
