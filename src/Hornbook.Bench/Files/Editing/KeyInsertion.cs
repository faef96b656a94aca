using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Puts a key that the file does not have yet where a person would look for it: below the last key of its table.</summary>
internal static class KeyInsertion
{
    /// <summary>The text with a line "key = value" put in.</summary>
    internal static string Insert(string text, KeyPath path, string line)
    {
        string lineBreak = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        return path.Table switch
        {
            null => $"{text}{(text.EndsWith('\n') ? string.Empty : lineBreak)}{lineBreak}[{path.Header}]{lineBreak}{line}{lineBreak}",
            { Origin: TableOrigin.Inline } inline => text.Insert(BeforeBrace(text, inline), (inline.Entries.Count > 0 ? ", " : " ") + line),
            TableNode table => Below(new LineIndex(text), table, line, lineBreak),
        };
    }

    private static int BeforeBrace(string text, TableNode inline)
    {
        int at = inline.Place.Offset + inline.Place.Length - 1;
        while (text[at - 1] is ' ' or '\t')
        {
            at--;
        }

        return at;
    }

    private static string Below(LineIndex lines, TableNode table, string line, string lineBreak)
    {
        Entry? last = table.Entries.Where(entry => entry.Value is ScalarNode or ListNode { OfTables: false } or TableNode { Origin: TableOrigin.Inline })
            .MaxBy(entry => entry.KeyPlace.Offset);
        int from = last?.KeyPlace.Offset ?? table.Place.Offset;
        Place end = lines.At(last is null ? from : last.Value.Place.Offset + last.Value.Place.Length, 0);
        Place key = lines.At(from, 0);
        string before = last is null ? string.Empty : lines.Text[lines.Start(key.Line)..from]; // the indentation, or "source." of a dotted key
        return lines.Text.Insert(lines.End(end.Line), lineBreak + before + line);
    }
}
