using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>A named table of the file, such as an antenna or a panel, that is there or will be.</summary>
/// <param name="Group">Key of the tables of its kind: "panels".</param>
/// <param name="Name">Its name.</param>
/// <param name="Siblings">The tables of its kind; null where the file has none.</param>
/// <param name="Table">The table; null where the file has none of that name.</param>
internal sealed record NamedTable(string Group, string Name, TableNode? Siblings, TableNode? Table)
{
    /// <summary>Follows a key of two parts.</summary>
    /// <exception cref="ArgumentException">The format has no named tables there.</exception>
    internal static NamedTable Follow(string key, TableNode root)
    {
        string[] parts = key.Split('.');
        if (parts.Length != 2 || parts[1].Length == 0 || !BenchFormat.File.Keys.Any(rule => rule.Name == parts[0] && rule.Value is NamedTablesRule))
        {
            throw new ArgumentException($"{key} is not a named table; antennas.NAME and panels.NAME are", nameof(key));
        }

        TableNode? siblings = root.Find(parts[0])?.Value as TableNode;
        return new NamedTable(parts[0], parts[1], siblings, siblings?.Find(parts[1])?.Value as TableNode);
    }

    /// <summary>The table, which must be there.</summary>
    /// <exception cref="ArgumentException">It is not.</exception>
    internal TableNode Present() => Table ?? throw new ArgumentException($"{Group}.{Name}: the file has no such table");

    /// <summary>The same kind under a name that must be free.</summary>
    /// <exception cref="ArgumentException">It is taken.</exception>
    internal NamedTable Free(string name) => Siblings?.Find(name) is null
        ? this with { Name = name, Table = null }
        : throw new ArgumentException($"{Group}.{name}: the file has this table already");

    /// <summary>Its name as a header gives it: in quotes where TOML asks for them.</summary>
    internal string Header => $"{Group}.{Bare(Name)}";

    /// <summary>A key as TOML writes it.</summary>
    internal static string Bare(string key) => key.Length > 0 && key.All(one => char.IsAsciiLetterOrDigit(one) || one is '-' or '_')
        ? key
        : $"\"{key.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
