using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Which lines of a text belong to which table.</summary>
internal sealed class OwnLines
{
    private readonly LineIndex _lines;
    private readonly (int First, int Last)[] _pieces;
    private readonly int[] _headers;

    /// <summary>Works them out.</summary>
    internal OwnLines(LineIndex lines, TableNode root)
    {
        _lines = lines;
        _pieces = [.. Of(root)];
        _headers = [.. root.Entries.SelectMany(Headers)];
    }

    /// <summary>First and last line of every piece of a table: its headers and its values, and those of the tables inside it.</summary>
    internal IEnumerable<(int First, int Last)> Of(TableNode table)
    {
        IEnumerable<(int, int)> header = table.Origin == TableOrigin.Header && table.Place != Place.Start ? [(table.Place.Line, table.Place.Line)] : [];
        return [.. header, .. table.Entries.SelectMany(Of)];
    }

    /// <summary>Whether a line is part of a value or a header: what looks like a comment there is none.</summary>
    internal bool IsTaken(int line) => _pieces.Any(piece => piece.First <= line && line <= piece.Last);

    /// <summary>The stretches of a table: from each of its headers to the last value below it, and its values that stand elsewhere.</summary>
    internal IReadOnlyList<(int First, int Last)> Stretches(Entry table)
    {
        (int First, int Last)[] under = [.. Headers(table).Select(header => (header, EndOfSection(header)))];
        return [.. under, .. Of(table).Where(piece => !under.Any(stretch => stretch.First <= piece.First && piece.Last <= stretch.Last))];
    }

    /// <summary>The last line of the stretch under one header in which a line lies: that of its last value.</summary>
    internal int EndOfSection(int line)
    {
        int next = _headers.Where(header => header > line).DefaultIfEmpty(int.MaxValue).Min();
        return _pieces.Where(piece => piece.First < next).Max(piece => piece.Last);
    }

    private static IEnumerable<int> Headers(Entry entry) => entry.Value switch
    {
        TableNode node => node.Entries.SelectMany(Headers).Concat(node.Origin == TableOrigin.Header ? [node.Place.Line] : []),
        ListNode { OfTables: true } list => list.Items.OfType<TableNode>().SelectMany(item => item.Entries.SelectMany(Headers).Append(item.Place.Line)),
        _ => [],
    };

    private IEnumerable<(int First, int Last)> Of(Entry entry) => entry.Value switch
    {
        TableNode { Origin: not TableOrigin.Inline } table => Of(table),
        ListNode { OfTables: true } list => list.Items.OfType<TableNode>().SelectMany(Of),
        Node value => [(entry.KeyPlace.Line, _lines.At(value.Place.Offset + value.Place.Length, 0).Line)],
    };
}
