using System.Globalization;

namespace Hornbook.Commands.Printing;

/// <summary>A table for spreadsheets: RFC 4180, a header with the unit of each column in brackets, points as decimal signs.</summary>
/// <param name="columns">"tone [Hz]", …</param>
internal sealed class CsvTable(params string[] columns)
{
    private readonly List<string> _lines = [Line(columns)];

    /// <summary>Adds a row; numbers keep all their digits, those that are not finite leave an empty cell.</summary>
    internal void Row(params object[] cells)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(cells.Length, columns.Length);
        _lines.Add(Line([.. cells.Select(Cell)]));
    }

    /// <inheritdoc/>
    public override string ToString() => string.Concat(_lines.Select(line => line + "\r\n"));

    private static string Cell(object cell) => cell switch
    {
        double number when !double.IsFinite(number) => string.Empty,
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => cell.ToString() ?? string.Empty,
    };

    private static string Line(IReadOnlyList<string> cells) => string.Join(',', cells.Select(Quoted));

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
