using Hornbook.Bench.Files.Quantities;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>A text read as TOML 1.0: its tree, and everything that is not TOML.</summary>
/// <param name="Root">The whole file as a table.</param>
/// <param name="Problems">What is not TOML, or defined twice.</param>
/// <param name="Broken">Lines that could not be read: what stands there may be meant, so it must not be called missing.</param>
internal sealed record TomlText(TableNode Root, IReadOnlyList<PlacedProblem> Problems, string Broken)
{
    /// <summary>Characters that are read again at most after lines are taken out: keeps the answer to garbage below a second.</summary>
    private const int MostReread = 400_000;

    private const int MostLevels = 16;

    private static readonly TomlSerializerOptions Options = new() { MaxDepth = MostLevels };

    /// <summary>Reads a text. A line that is not TOML is taken out and the rest read on, so that one slip does not hide the next.</summary>
    internal static TomlText Read(string text)
    {
        LineIndex original = new(text);
        List<PlacedProblem> problems = [];
        SyntaxRepair repair = new(text);
        int mostRepairs = Math.Clamp(MostReread / (text.Length + 1), 2, 20);
        for (int round = 0; round < mostRepairs; round++)
        {
            DocumentSyntax? document = Parse(repair.Text, problems);
            if (document is null)
            {
                return new TomlText(new TableNode(Place.Start, TableOrigin.Header), problems, text);
            }

            if (!document.HasErrors)
            {
                return Finish(document, original, problems, repair);
            }

            problems.AddRange(repair.TakeOut(document).Select(found => found with { Place = original.Same(found.Place) }));
        }

        problems.Add(new PlacedProblem(problems[^1].Place, new Misreading(
            "there may be more lines that are not TOML", "a bench file has one key = value on a line", "correct the lines above first")));
        return new TomlText(new TableNode(Place.Start, TableOrigin.Header), problems, text);
    }

    private static TomlText Finish(DocumentSyntax document, LineIndex original, List<PlacedProblem> problems, SyntaxRepair repair)
    {
        LineIndex lines = problems.Count == 0 ? original : new LineIndex(repair.Text);
        (TableNode root, IReadOnlyList<PlacedProblem> doubles) = TreeBuilder.Build(document, lines);
        problems.AddRange(doubles);
        if (problems.Count == 0)
        {
            problems.AddRange(Validated(original));
        }

        return new TomlText(root, problems, repair.TakenOut);
    }

    /// <summary>The library's own check, behind ours: what it alone finds is still a problem.</summary>
    private static IEnumerable<PlacedProblem> Validated(LineIndex lines) =>
        SyntaxParser.Parse(lines.Text, Options, string.Empty, validate: true).Diagnostics.Select(found => new PlacedProblem(
            lines.At(found.Span.Offset, found.Span.Length),
            new Misreading(Shown.Text(found.Message), "TOML 1.0 allows each name once", "take one of the two away")));

    private static DocumentSyntax? Parse(string text, List<PlacedProblem> problems)
    {
        try
        {
            // The parser throws on a backslash as the very last letter (2.10.2): it always gets a line break at the end.
            return SyntaxParser.Parse(text.EndsWith('\n') ? text : text + "\n", Options, string.Empty, validate: false);
        }
        catch (TomlException)
        {
            // The one thing for which this parser throws although it collects errors, and without a place: brackets too deep.
            Place place = new LineIndex(text).At(Deepest(text), 1);
            problems.Add(new PlacedProblem(place, new Misreading(
                "brackets stand too deep inside each other", "a bench file needs two levels at most", "take brackets away")));
            return null;
        }
    }

    /// <summary>Where the brackets first stand deeper than is read.</summary>
    private static int Deepest(string text)
    {
        int depth = 0;
        for (int i = 0; i < text.Length; i++)
        {
            depth += text[i] is '[' or '{' ? 1 : text[i] is ']' or '}' ? -1 : 0;
            if (depth > MostLevels)
            {
                return i;
            }
        }

        return 0;
    }
}
