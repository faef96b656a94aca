using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Changes the text of a bench file; every other character stays.</summary>
internal static class TextEditor
{
    /// <summary>The text with one value or one table changed.</summary>
    /// <param name="text">TOML in which nothing is wrong.</param>
    /// <param name="change">What to change.</param>
    /// <exception cref="ArgumentException">The format has no such key, or the file no such table.</exception>
    internal static string Apply(string text, BenchChange change)
    {
        if (change.Table is TableChange table)
        {
            return TableEditor.Apply(text, change.Key, table);
        }

        KeyPath path = KeyPath.Follow(change.Key, TomlText.Read(text).Root);
        Entry? entry = path.Table?.Find(path.Rule.Name);
        if (change.Value is double value && IsAlready(value, entry, path.Rule))
        {
            return text;
        }

        if (path.Rule.Value is TableRule or NamedTablesRule or ListRule || entry is { Value: not ScalarNode })
        {
            throw new ArgumentException($"{change.Key} is not a single value", nameof(change));
        }

        string wanted = change.Text ?? Written(change.Value!.Value, entry, path.Rule);
        return entry is { Value: ScalarNode old }
            ? Replaced(text, old, Literal(wanted, path.Rule.Value, old.Raw))
            : KeyInsertion.Insert(text, path, $"{path.Rule.Name} = {Literal(wanted, path.Rule.Value, "\"")}");
    }

    private static string Replaced(string text, ScalarNode old, string literal) =>
        string.Concat(text.AsSpan(0, old.Place.Offset), literal, text.AsSpan(old.Place.Offset + old.Place.Length));

    /// <summary>Whether the file says this value already, to the step that would be written.</summary>
    private static bool IsAlready(double value, Entry? entry, KeyRule rule)
    {
        if (rule.Value is not QuantityRule { Quantity: Quantity quantity })
        {
            return false;
        }

        string? stated = entry is null ? rule.Default?.Trim('"') : (entry.Value as ScalarNode)?.Value as string;
        double tolerance = quantity.Resolution > 0.0 ? 0.5 * quantity.Resolution : 5e-7 * Math.Abs(value);
        return stated is not null && QuantityText.Read(stated, quantity) is { Misreading: null } reading && Math.Abs(reading.Value - value) < tolerance;
    }

    private static string Written(double value, Entry? entry, KeyRule rule)
    {
        if (rule.Value is not QuantityRule { Quantity: Quantity quantity } wanted)
        {
            return value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture);
        }

        string like = (entry?.Value as ScalarNode)?.Value as string ?? wanted.Example.Trim('"');
        return QuantityText.Write(value, QuantityText.Read(like, quantity).Unit ?? quantity.Units[0], quantity);
    }

    /// <summary>A value as TOML, in the quotes that stood there.</summary>
    private static string Literal(string wanted, ValueRule rule, string was)
    {
        bool bare = rule is CountRule or TruthRule || (rule is RatioRule && !wanted.EndsWith("dB", StringComparison.Ordinal));
        return bare ? wanted
            : was.StartsWith('\'') && !was.StartsWith("'''", StringComparison.Ordinal) && !wanted.Contains('\'', StringComparison.Ordinal) ? $"'{wanted}'"
            : $"\"{wanted.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
    }
}
