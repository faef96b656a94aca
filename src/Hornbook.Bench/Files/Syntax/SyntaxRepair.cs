using System.Text;
using Tomlyn.Syntax;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>Takes the first unreadable line out of a text, so that what follows can be read as it was meant.</summary>
internal sealed class SyntaxRepair(string text)
{
    private readonly StringBuilder _takenOut = new();

    /// <summary>The text without what was taken out; lines keep their numbers.</summary>
    internal string Text { get; private set; } = text;

    /// <summary>The lines taken out.</summary>
    internal string TakenOut => _takenOut.ToString();

    /// <summary>Takes the first unreadable line out and says what is wrong with it.</summary>
    internal PlacedProblem TakeOutFirst(DocumentSyntax document)
    {
        LineIndex lines = new(Text);
        DiagnosticMessage first = document.Diagnostics.MinBy(message => message.Span.Offset)!;
        Place at = lines.At(first.Span.Offset, first.Span.Length);
        if (Unclosed(document, at.Offset) is ValueSyntax open && lines.At(open.Span.Offset, 1) is Place start && start.Line < at.Line)
        {
            int last = at.Offset >= Text.Length || open is StringValueSyntax ? lines.Count : at.Line - 1;
            TakeOut(lines, start.Line, last);
            return new PlacedProblem(start, SyntaxAdvice.NotClosed(Opening(lines, start), open));
        }

        PlacedProblem problem = SyntaxAdvice.For(lines, at, first.Message);
        TakeOut(lines, at.Line, at.Line);
        return problem;
    }

    private static string Opening(LineIndex lines, Place start) => lines.Text.Substring(start.Offset, 1);

    /// <summary>The last value before an offset that was opened and not closed.</summary>
    private static ValueSyntax? Unclosed(DocumentSyntax document, int offset)
    {
        KeyValueSyntax? last = document.Tables.SelectMany(table => table.Items).Concat(document.KeyValues)
            .Where(item => item.Value is not null && item.Value.Span.Offset <= offset && item.Value.Span.Length > 0)
            .MaxBy(item => item.Value!.Span.Offset);
        return last?.Value is ArraySyntax { CloseBracket: null } or InlineTableSyntax { CloseBrace: null }
            or StringValueSyntax { Token.TokenKind: TokenKind.StringMulti or TokenKind.StringLiteralMulti }
            ? last.Value
            : null;
    }

    /// <summary>Blanks lines; a header that can be guessed stays, since the keys under it belong to it.</summary>
    private void TakeOut(LineIndex lines, int first, int last)
    {
        StringBuilder kept = new(Text[..lines.Start(first)]);
        for (int line = first; line <= last; line++)
        {
            string was = lines.Line(line);
            _takenOut.Append(was).Append('\n');
            kept.Append(SyntaxAdvice.GuessedHeader(was) ?? string.Empty);
            kept.Append(Text, lines.End(line), (line < lines.Count ? lines.Start(line + 1) : Text.Length) - lines.End(line));
        }

        kept.Append(Text, last < lines.Count ? lines.Start(last + 1) : Text.Length, last < lines.Count ? Text.Length - lines.Start(last + 1) : 0);
        Text = kept.ToString();
    }
}
