using System.Text.RegularExpressions;
using Hornbook.Bench.Files.Quantities;
using Tomlyn.Syntax;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>Says in plain words what is wrong with a line that is not TOML: the slips that people make, and a last resort.</summary>
internal static partial class SyntaxAdvice
{
    private const int LongestLine = 400;

    /// <summary>What is wrong with a line.</summary>
    internal static PlacedProblem For(LineIndex lines, Place at, string message)
    {
        string line = lines.Line(at.Line);
        foreach (Func<string, (int Column, int Length, Misreading What)?> known in line.Length > LongestLine ? [] : Known)
        {
            if (known(line) is { } found)
            {
                return new PlacedProblem(lines.At(lines.Start(at.Line) + found.Column, found.Length), found.What);
            }
        }

        return new PlacedProblem(at, new Misreading(
            $"this is not TOML ({Shown.Text(message.TrimEnd('.'))})", "a line is key = value, [name] or # comment", "correct the line"));
    }

    /// <summary>What is wrong with a value that is opened and not closed.</summary>
    internal static Misreading NotClosed(string opening, ValueSyntax open) => open switch
    {
        ArraySyntax => new Misreading("a list is opened and not closed", "a list ends with ]", "type ] after its last value"),
        InlineTableSyntax => new Misreading("a brace is opened and not closed on its line", "values in braces stand on one line", "type } at its end"),
        _ => new Misreading(
            "a text is opened with three quotes and not closed", "a text stands on one line, in one pair of quotes", $"type one {opening} before and one after"),
    };

    /// <summary>The header that a broken line was meant to be, or null.</summary>
    internal static string? GuessedHeader(string line)
    {
        Match header = BrokenHeader().Match(line);
        string name = header.Groups["name"].Value;
        return !header.Success ? null : header.Groups["open"].Length > 1 ? $"[[{name}]]" : $"[{name}]";
    }

    private static readonly Func<string, (int Column, int Length, Misreading What)?>[] Known =
    [
        CurlyQuotes, OpenQuote, Header, Colon, NoEquals, NoValue, TwoOnALine, Backslash, HugeNumber, DecimalComma, NoQuotes,
    ];

    private static (int, int, Misreading)? CurlyQuotes(string line) => Found(Curly().Match(line), curly => new Misreading(
        $"{curly.Value} is a curly quote", "straight quotes fit", "type \" in its place"));

    private static (int, int, Misreading)? OpenQuote(string line) => Found(Unended().Match(line), value => new Misreading(
        $"{value.Groups["key"].Value} = {Shown.Text(value.Groups["value"].Value)} is not closed",
        "a text begins and ends with a quote",
        $"type {value.Groups["key"].Value} = \"{Shown.Text(value.Groups["text"].Value.TrimEnd())}\""));

    private static (int, int, Misreading)? Header(string line) => Found(BrokenHeader().Match(line), header => new Misreading(
        $"{Shown.Text(header.Value.Trim())} is not a header", "a header is one name in brackets", $"type {GuessedHeader(line)}"));

    private static (int, int, Misreading)? Colon(string line) => Found(ColonForEquals().Match(line), pair => new Misreading(
        $"{Shown.Text(pair.Value.Trim())} has a colon", "a key and its value are joined by =", $"type {pair.Groups["key"].Value} = {Value(pair)}"));

    private static (int, int, Misreading)? NoEquals(string line) => Found(KeyWithoutEquals().Match(line), pair => new Misreading(
        $"{Shown.Text(pair.Value.Trim())} has no =", "a key and its value are joined by =", $"type {pair.Groups["key"].Value} = {Value(pair)}"));

    private static (int, int, Misreading)? NoValue(string line) => Found(KeyAlone().Match(line), pair => new Misreading(
        $"{pair.Groups["key"].Value} has no value", "a line is key = value", $"type a value after {pair.Groups["key"].Value} ="));

    private static (int, int, Misreading)? TwoOnALine(string line) => Found(SecondPair().Match(line), second => new Misreading(
        $"{second.Groups["key"].Value} follows on the same line", "each key stands on a line of its own", $"begin a new line before {second.Groups["key"].Value}"));

    private static (int, int, Misreading)? Backslash(string line) => Found(StrayBackslash().Match(line), slash => new Misreading(
        $"{slash.Groups["at"].Value} stands in a text in double quotes", "a backslash is written twice there", "type \\\\ or use single quotes"));

    private static (int, int, Misreading)? HugeNumber(string line) => Found(LongNumber().Match(line), number => new Misreading(
        $"{Shown.Text(number.Groups["at"].Value)} is too large a number", "whole numbers have 18 digits at most", "type a smaller number"));

    private static (int, int, Misreading)? DecimalComma(string line) => Found(CommaInNumber().Match(line), number => new Misreading(
        $"{Shown.Text(number.Groups["at"].Value)} has a comma in its number",
        "a decimal point fits, and quotes where there is a unit",
        $"type {number.Groups["whole"].Value}.{number.Groups["rest"].Value}"));

    private static (int, int, Misreading)? NoQuotes(string line) => Found(BareValue().Match(line), pair => new Misreading(
        $"{pair.Groups["key"].Value} = {Shown.Text(pair.Groups["value"].Value.Trim())} has no quotes",
        "a text, or a number with its unit, stands in quotes",
        $"type {pair.Groups["key"].Value} = \"{Shown.Text(pair.Groups["value"].Value.Trim())}\""));

    private static string Value(Match pair) => Shown.Text(pair.Groups["value"].Value.Trim());

    private static (int, int, Misreading)? Found(Match match, Func<Match, Misreading> say)
    {
        Group place = match.Groups["at"].Success ? match.Groups["at"] : match;
        return match.Success ? (place.Index, place.Length, say(match)) : null;
    }

    private const string Key = @"(?<key>[A-Za-z0-9_-]+(?:\.[A-Za-z0-9_-]+)*)";

    [GeneratedRegex("[\u201C\u201D\u201E\u201F\u2018\u2019\u00AB\u00BB]", RegexOptions.CultureInvariant)]
    private static partial Regex Curly();

    [GeneratedRegex("^\\s*" + Key + "\\s*=\\s*(?<at>(?<value>\"(?<text>[^\"]*)|'(?<text>[^']*)))$", RegexOptions.CultureInvariant)]
    private static partial Regex Unended();

    [GeneratedRegex(@"^\s*(?<at>(?<open>\[{1,2})\s*(?<name>[A-Za-z0-9_-]+(?:\.[A-Za-z0-9_-]+)*)\s*(?:\]*|\]{0,2}[^\]\[,""'=]*))\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex BrokenHeader();

    [GeneratedRegex("^\\s*(?<at>" + Key + "\\s*:\\s*(?<value>[^=]*))$", RegexOptions.CultureInvariant)]
    private static partial Regex ColonForEquals();

    [GeneratedRegex("^\\s*(?<at>" + Key + "\\s+(?<value>[\"'0-9][^=]*))$", RegexOptions.CultureInvariant)]
    private static partial Regex KeyWithoutEquals();

    [GeneratedRegex("^\\s*(?<at>" + Key + "\\s*=?)\\s*(?:#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex KeyAlone();

    [GeneratedRegex("=\\s*(?:\"[^\"]*\"|'[^']*'|[0-9.]+)\\s*[,;]?\\s*(?<at>" + Key + "\\s*=)", RegexOptions.CultureInvariant)]
    private static partial Regex SecondPair();

    [GeneratedRegex("^[^\"']*=\\s*\"[^\"]*?(?<at>\\\\[^btnfre\"\\\\uUx])", RegexOptions.CultureInvariant)]
    private static partial Regex StrayBackslash();

    [GeneratedRegex("=\\s*(?<at>[+-]?[0-9_]{19,})\\s*(?:#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex LongNumber();

    [GeneratedRegex("=\\s*(?<at>(?<whole>[+-]?[0-9]+),(?<rest>[0-9]+))\\s*(?:#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex CommaInNumber();

    [GeneratedRegex("^\\s*" + Key + "\\s*=\\s*(?<at>(?<value>[^\"'\\[{#\\s][^\"'#=]*))(?:#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex BareValue();
}
