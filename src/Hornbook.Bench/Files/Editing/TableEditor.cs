using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Makes, copies and takes out whole named tables; every line of another table stays, and so does every comment that is not theirs.</summary>
internal static class TableEditor
{
    /// <summary>The text with one table changed.</summary>
    /// <param name="text">TOML in which nothing is wrong.</param>
    /// <param name="key">The table: "panels.grid".</param>
    /// <param name="change">What becomes of it.</param>
    /// <exception cref="ArgumentException">There is no such table, or its name is taken, or it shares its line with another.</exception>
    internal static string Apply(string text, string key, TableChange change)
    {
        TableNode root = TomlText.Read(text).Root;
        NamedTable named = NamedTable.Follow(key, root);
        LineIndex lines = new(text);
        return change switch
        {
            NewTable made => Inserted(lines, root, named.Free(named.Name), [$"[{named.Header}]", .. made.Lines]),
            CopiedTable copy => Inserted(lines, root, named.Free(copy.Name), TableCopy.Lines(lines, named.Present(), named.Free(copy.Name).Header)),
            _ => TableRemoval.Remove(lines, root, named),
        };
    }

    private static string Inserted(LineIndex lines, TableNode root, NamedTable table, IReadOnlyList<string> block)
    {
        string text = lines.Text;
        string lineBreak = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        int end = lines.End(LineAbove(lines, root, table));
        string rest = text[end..];
        return $"{text[..end]}{lineBreak}{lineBreak}{string.Join(lineBreak, block)}{(rest.Length > 0 ? rest : lineBreak)}";
    }

    /// <summary>The line below which it is put: the last of its kind, or else of the antennas, since they are at hand as well.</summary>
    private static int LineAbove(LineIndex lines, TableNode root, NamedTable table)
    {
        OwnLines own = new(lines, root);
        TableNode? above = table.Siblings is { } siblings && own.Of(siblings).Any() ? siblings : root.Find("antennas")?.Value as TableNode;
        (int First, int Last)[] pieces = above is null ? [] : [.. own.Of(above)];
        return own.EndOfSection(pieces.Length > 0 ? pieces.Max(piece => piece.Last) : lines.Count);
    }
}
