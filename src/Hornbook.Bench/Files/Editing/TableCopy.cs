using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>A table as lines under another header.</summary>
internal static class TableCopy
{
    /// <summary>Its header and its values as they stand, with the comments beside them; whatever way they are written in the file.</summary>
    internal static IReadOnlyList<string> Lines(LineIndex lines, TableNode table, string header) => [$"[{header}]", .. Values(lines, table, header)];

    private static IEnumerable<string> Values(LineIndex lines, TableNode table, string header) =>
    [
        .. table.Entries.Where(IsValue).Select(entry => Value(lines, table, entry)),
        .. table.Entries.Where(entry => !IsValue(entry)).SelectMany(entry => Tables(lines, entry, $"{header}.{NamedTable.Bare(entry.Key)}")),
    ];

    private static IEnumerable<string> Tables(LineIndex lines, Entry entry, string header) => entry.Value is ListNode list
        ? list.Items.OfType<TableNode>().SelectMany(item => Values(lines, item, header).Prepend($"[[{header}]]"))
        : Lines(lines, (TableNode)entry.Value, header);

    private static bool IsValue(Entry entry) => entry.Value is ScalarNode or ListNode { OfTables: false } or TableNode { Origin: TableOrigin.Inline };

    private static string Value(LineIndex lines, TableNode table, Entry entry)
    {
        int end = entry.Value.Place.Offset + entry.Value.Place.Length;
        int stop = table.Origin == TableOrigin.Inline ? end : lines.End(lines.At(end, 0).Line);
        return lines.Text[entry.KeyPlace.Offset..stop].TrimEnd();
    }
}
