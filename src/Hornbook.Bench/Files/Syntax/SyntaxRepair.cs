using System.Text;
using Tomlyn.Syntax;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>Takes unreadable lines out of a text, so that what follows can be read as it was meant.</summary>
internal sealed class SyntaxRepair(string text)
{
    private readonly StringBuilder _takenOut = new();

    /// <summary>The text without what was taken out; lines keep their numbers.</summary>
    internal string Text { get; private set; } = text;

    /// <summary>The lines taken out.</summary>
    internal string TakenOut => _takenOut.ToString();

    /// <summary>Takes unreadable lines out and says what is wrong with each, up to the first that may make others seem wrong.</summary>
    internal IReadOnlyList<PlacedProblem> TakeOut(DocumentSyntax document)
    {
        LineIndex lines = new(Text);
        List<PlacedProblem> found = [];
        HashSet<int> unreadable = [];
        Queue<ValueSyntax> values = new(ValuesInOrder(document));
        ValueSyntax? last = null;
        foreach (DiagnosticMessage message in document.Diagnostics.OrderBy(one => one.Span.Offset))
        {
            Place at = lines.At(message.Span.Offset, message.Span.Length);
            while (values.TryPeek(out ValueSyntax? next) && next.Span.Offset <= at.Offset)
            {
                last = values.Dequeue();
            }

            if (unreadable.Contains(at.Line) || unreadable.Contains(at.Line - 1))
            {
                continue; // what is said just below an unreadable line may come from it: if not, it is said again next time
            }

            if (Open(last) is ValueSyntax open && lines.At(open.Span.Offset, 1) is Place start && start.Line < at.Line)
            {
                int end = at.Offset >= Text.Length || open is StringValueSyntax ? lines.Count : at.Line - 1;
                unreadable.UnionWith(Enumerable.Range(start.Line, end - start.Line + 1));
                found.Add(new PlacedProblem(start, SyntaxAdvice.NotClosed(lines.Text.Substring(start.Offset, 1), open)));
                break;
            }

            unreadable.Add(at.Line);
            found.Add(SyntaxAdvice.For(lines, at, message.Message));
            if (message.Message.Contains("string", StringComparison.Ordinal))
            {
                break; // an open quote swallows the lines below it: what is said of them is not their fault
            }
        }

        Blank(lines, unreadable);
        return found;
    }

    private static IEnumerable<ValueSyntax> ValuesInOrder(DocumentSyntax document) => document.KeyValues.Concat(document.Tables.SelectMany(table => table.Items))
        .Select(item => item.Value).OfType<ValueSyntax>().Where(value => value.Span.Length > 0).OrderBy(value => value.Span.Offset);

    /// <summary>A value if it may go on over several lines and does not end.</summary>
    private static ValueSyntax? Open(ValueSyntax? value) =>
        value is ArraySyntax { CloseBracket: null } or InlineTableSyntax { CloseBrace: null }
            or StringValueSyntax { Token.TokenKind: TokenKind.StringMulti or TokenKind.StringLiteralMulti }
            ? value
            : null;

    /// <summary>Empties lines; a header that can be guessed stays, since the keys under it belong to it.</summary>
    private void Blank(LineIndex lines, HashSet<int> unreadable)
    {
        StringBuilder kept = new(Text.Length);
        for (int line = 1; line <= lines.Count; line++)
        {
            string was = lines.Line(line);
            if (unreadable.Contains(line))
            {
                _takenOut.Append(was).Append('\n');
                was = SyntaxAdvice.GuessedHeader(was) ?? string.Empty;
            }

            kept.Append(was).Append(line < lines.Count ? "\n" : string.Empty);
        }

        Text = kept.ToString();
    }
}
