namespace Hornbook.Commands.Printing;

/// <summary>A table of text: numbers to the right, the last column wrapped where it would pass the edge.</summary>
/// <param name="columns">Names; one that begins with '>' is set to the right.</param>
internal sealed class TextTable(params string[] columns)
{
    private const string Between = "  ";

    // What is left to the last column where the others take nearly all.
    private const int Narrowest = 10;

    private readonly List<string[]> _rows = [];
    private readonly bool[] _toTheRight = [.. columns.Select(c => c.StartsWith('>'))];
    private readonly string[] _names = [.. columns.Select(c => c.TrimStart('>'))];

    /// <summary>Adds a row with a cell for each column.</summary>
    internal void Row(params string[] cells)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(cells.Length, _names.Length);
        _rows.Add(cells);
    }

    /// <summary>The table as lines; the names are left out where all are empty.</summary>
    internal IEnumerable<string> Lines(int width)
    {
        bool headed = _names.Any(n => n.Length > 0);
        int[] widths = [.. Enumerable.Range(0, _names.Length).Select(Widest)];
        int last = widths.Length - 1;
        widths[last] = Math.Min(widths[last], Math.Max(Narrowest, width - widths[..last].Sum() - (Between.Length * last)));
        IEnumerable<string[]> rows = headed ? [_names, [.. widths.Select(w => new string('-', w))], .. _rows] : _rows;
        return rows.SelectMany(row => Lay(row, widths));
    }

    private int Widest(int column) => _rows.Select(r => r[column].Length).Append(_names[column].Length).Max();

    private IEnumerable<string> Lay(string[] row, int[] widths)
    {
        int last = widths.Length - 1;
        string start = string.Join(Between, row[..last].Select((cell, i) => Align(cell, i, widths[i])));
        start += last > 0 ? Between : string.Empty;
        foreach (string part in TextPage.Wrap(row[last], widths[last], 0))
        {
            yield return (start + Align(part, last, widths[last])).TrimEnd();
            start = new string(' ', start.Length);
        }
    }

    private string Align(string cell, int column, int width) => _toTheRight[column] ? cell.PadLeft(width) : cell.PadRight(width);
}
