namespace Hornbook.Bench.Files.Syntax;

/// <summary>Where the lines of a text begin.</summary>
internal sealed class LineIndex
{
    private readonly List<int> _starts = [0];

    internal LineIndex(string text)
    {
        Text = text;
        for (int at = text.IndexOf('\n', StringComparison.Ordinal); at >= 0; at = text.IndexOf('\n', at + 1))
        {
            _starts.Add(at + 1);
        }
    }

    /// <summary>The text.</summary>
    internal string Text { get; }

    /// <summary>How many lines; a text that ends with a line break has an empty last one.</summary>
    internal int Count => _starts.Count;

    /// <summary>Where a line (from 1) begins.</summary>
    internal int Start(int line) => _starts[line - 1];

    /// <summary>Where a line (from 1) ends, its line break not counted.</summary>
    internal int End(int line)
    {
        int end = line < Count ? _starts[line] - 1 : Text.Length;
        return end > Start(line) && Text[end - 1] == '\r' ? end - 1 : end;
    }

    /// <summary>A line (from 1) without its break.</summary>
    internal string Line(int line) => Text[Start(line)..End(line)];

    /// <summary>The place of an offset.</summary>
    internal Place At(int offset, int length)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        int found = _starts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return new Place(line + 1, offset - _starts[line] + 1, offset, Math.Clamp(length, 0, Text.Length - offset));
    }

    /// <summary>The same line and column in this text as a place has in another whose lines agree.</summary>
    internal Place Same(Place other) => At(Start(Math.Min(other.Line, Count)) + other.Column - 1, other.Length);
}
