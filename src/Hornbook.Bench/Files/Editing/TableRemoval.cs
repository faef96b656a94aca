using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Takes a table out of a text.</summary>
internal static class TableRemoval
{
    /// <summary>The text without the lines of the table, the comments directly above it, and one of the two blank lines that would meet.</summary>
    /// <exception cref="ArgumentException">There is no such table, or it shares its line with another.</exception>
    internal static string Remove(LineIndex lines, TableNode root, NamedTable named)
    {
        named.Present();
        if (named.Siblings!.Origin == TableOrigin.Inline)
        {
            throw new ArgumentException($"{named.Group}.{named.Name} stands in one pair of braces with others; it is taken out by hand");
        }

        Entry entry = named.Siblings.Find(named.Name)!;
        HashSet<int> gone = [];
        OwnLines own = new(lines, root);
        foreach ((int first, int last) in own.Stretches(entry).Order())
        {
            gone.UnionWith(Enumerable.Range(first, last - first + 1));
            gone.UnionWith(CommentsAbove(lines, own, first));
            DropBlank(lines, gone, last);
        }

        return string.Concat(Enumerable.Range(1, lines.Count).Where(line => !gone.Contains(line)).Select(line => WithBreak(lines, line)));
    }

    private static IEnumerable<int> CommentsAbove(LineIndex lines, OwnLines own, int line)
    {
        for (int above = line - 1; above >= 1 && lines.Line(above).TrimStart().StartsWith('#') && !own.IsTaken(above); above--)
        {
            yield return above;
        }
    }

    /// <summary>Where what is left above and below would be two blank lines, or a blank line at the end of the file, one goes too.</summary>
    private static void DropBlank(LineIndex lines, HashSet<int> gone, int last)
    {
        int above = last;
        while (above >= 1 && gone.Contains(above))
        {
            above--;
        }

        bool endsFile = last >= lines.Count || (last + 1 == lines.Count && lines.Line(lines.Count).Length == 0);
        if (above >= 1 && IsBlank(lines, above) && (endsFile || IsBlank(lines, last + 1)))
        {
            gone.Add(above);
        }
    }

    private static bool IsBlank(LineIndex lines, int line) => string.IsNullOrWhiteSpace(lines.Line(line));

    private static string WithBreak(LineIndex lines, int line) => lines.Text[lines.Start(line)..(line < lines.Count ? lines.Start(line + 1) : lines.Text.Length)];
}
