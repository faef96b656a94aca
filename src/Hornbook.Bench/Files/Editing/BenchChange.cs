using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;

namespace Hornbook.Bench.Files.Editing;

/// <summary>One thing of a bench file to be changed: a value, or a whole named table.</summary>
public sealed record BenchChange
{
    private BenchChange(string key) => Key = key;

    /// <summary>The key with its tables: "source.x", "antennas.large-horn.length", "demonstrations.beam-width.from".</summary>
    public string Key { get; }

    /// <summary>What to write, without quotes; null where <see cref="Value"/> is given.</summary>
    public string? Text { get; private init; }

    /// <summary>The new value in SI, to be written in the unit that the file uses there; null where <see cref="Text"/> is given.</summary>
    public double? Value { get; private init; }

    /// <summary>Whether a whole table is added, copied or taken out, and not a value changed.</summary>
    public bool IsOfTable => Table is not null;

    /// <summary>What becomes of a whole table; null where a value is changed.</summary>
    internal TableChange? Table { get; private init; }

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

    /// <summary>A key set to true or false.</summary>
    public static BenchChange ToTruth(string key, bool truth) => ToText(key, truth ? "true" : "false");

    /// <summary>One end of the bench put in another pose; only what differs from the file is written.</summary>
    public static IReadOnlyList<BenchChange> ToPose(BenchEnd end, Pose pose) => ToPose(end == BenchEnd.Source ? "source" : "receiver", pose);

    /// <summary>A thing put in another pose; only what differs from the file is written.</summary>
    /// <param name="table">Its table: "source", "panels.grid".</param>
    /// <param name="pose">The pose.</param>
    public static IReadOnlyList<BenchChange> ToPose(string table, Pose pose)
    {
        ArgumentException.ThrowIfNullOrEmpty(table);
        return
        [
            ToValue($"{table}.x", pose.Position.X), ToValue($"{table}.y", pose.Position.Y), ToValue($"{table}.z", pose.Position.Z),
            ToValue($"{table}.turn", pose.Turn), ToValue($"{table}.tilt", pose.Tilt), ToValue($"{table}.roll", pose.Roll),
        ];
    }

    /// <summary>A new named table, such as a panel; it is put below the last of its kind.</summary>
    /// <param name="table">The table with its name: "panels.grid-2".</param>
    /// <param name="lines">The lines below its header: "kind = \"metal plate\"" and so on.</param>
    public static BenchChange ToNew(string table, params IReadOnlyList<string> lines)
    {
        ArgumentException.ThrowIfNullOrEmpty(table);
        ArgumentNullException.ThrowIfNull(lines);
        return new BenchChange(table) { Table = new NewTable([.. lines]) };
    }

    /// <summary>A named table once more under another name, with the comments that stand beside its values; it is put below the last of its kind.</summary>
    /// <param name="table">The table that is copied: "panels.grid".</param>
    /// <param name="name">The name of the copy: "grid-2".</param>
    public static BenchChange ToCopy(string table, string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(table);
        ArgumentException.ThrowIfNullOrEmpty(name);
        return new BenchChange(table) { Table = new CopiedTable(name) };
    }

    /// <summary>A named table taken out, with the comments inside it and those that stand directly above it; all other comments stay.</summary>
    /// <param name="table">The table: "panels.grid".</param>
    public static BenchChange ToNothing(string table)
    {
        ArgumentException.ThrowIfNullOrEmpty(table);
        return new BenchChange(table) { Table = new NoTable() };
    }
}
