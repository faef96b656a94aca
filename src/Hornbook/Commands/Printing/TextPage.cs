namespace Hornbook.Commands.Printing;

/// <summary>Plain text for a terminal, at most <see cref="Width"/> characters wide.</summary>
/// <param name="styled">Whether headings may be set in bold.</param>
internal sealed class TextPage(bool styled)
{
    internal const int Width = 80;

    private readonly List<string> _lines = [];

    /// <summary>The lines so far.</summary>
    internal IReadOnlyList<string> Lines => _lines;

    /// <summary>A heading, with an empty line before it unless it is the first.</summary>
    internal void Heading(string text)
    {
        Gap();
        _lines.AddRange(Wrap(text, Width, 0).Select(line => styled ? $"\e[1m{line}\e[0m" : line));
    }

    /// <summary>An empty line, unless there is one or nothing yet.</summary>
    internal void Gap()
    {
        if (_lines.Count > 0 && _lines[^1].Length > 0)
        {
            _lines.Add(string.Empty);
        }
    }

    /// <summary>A text, wrapped; later lines are indented.</summary>
    internal void Paragraph(string text, int indent = 0) => _lines.AddRange(Wrap(text, Width, indent));

    /// <summary>A table.</summary>
    internal void Table(TextTable table) => _lines.AddRange(table.Lines(Width));

    /// <summary>Writes the page.</summary>
    internal void WriteTo(TextWriter output)
    {
        foreach (string line in _lines)
        {
            output.WriteLine(line);
        }
    }

    /// <summary>Breaks a text between words.</summary>
    internal static IEnumerable<string> Wrap(string text, int width, int indent)
    {
        string line = string.Empty;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Trim().Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = new string(' ', indent) + word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }
}
