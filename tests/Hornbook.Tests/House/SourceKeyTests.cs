using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A citation leads somewhere: [Key] to docs/sources.md, "Eq. page (n)" to docs/physics/page.md.</summary>
public sealed partial class SourceKeyTests
{
    private static IEnumerable<SourceText> Citing =>
        Checkout.Pages.Concat(Checkout.Under("src/", ".cs", ".razor")).Concat(Checkout.Under("tests/", ".cs", ".csv"))
            .Where(f => f.Path != "tests/Hornbook.Tests/House/SourceKeyTests.cs");

    [Fact]
    public void Every_key_is_listed_in_the_sources()
    {
        HashSet<string> known = [.. ListedKeys(Checkout.File("docs/sources.md"))];
        Offences.None(Citing.SelectMany(f => UnknownKeys(f, known)));
    }

    [Fact]
    public void The_sources_are_in_order_and_listed_once()
    {
        string[] keys = [.. ListedKeys(Checkout.File("docs/sources.md"))];
        Assert.NotEmpty(keys);
        Assert.Equal(keys.Distinct().Order(StringComparer.OrdinalIgnoreCase), keys);
    }

    [Fact]
    public void Every_source_is_cited_somewhere()
    {
        HashSet<string> cited = [.. Citing.Where(f => f.Path != "docs/sources.md").SelectMany(f => Key().Matches(f.Text)).Select(m => m.Groups[1].Value)];
        Offences.None(ListedKeys(Checkout.File("docs/sources.md")).Where(k => !cited.Contains(k)).Select(k => $"docs/sources.md: [{k}] is cited nowhere"));
    }

    [Fact]
    public void Every_equation_cited_is_on_its_page() =>
        Offences.None(Citing.SelectMany(f => UnknownEquations(f, page => Checkout.Files.FirstOrDefault(p => p.Path == $"docs/physics/{page}.md"))));

    [Fact]
    public void A_key_or_an_equation_that_leads_nowhere_is_seen()
    {
        SourceText file = new("src/A.cs", "/// See [Nobody1999] and [Pozar2012], 3 [GHz]; Eq. guide (7), Eq. guide (2), Eq. nowhere (1).");
        Assert.Equal(["src/A.cs:1: [Nobody1999] is not in docs/sources.md"], UnknownKeys(file, ["Pozar2012"]));
        Assert.Equal(2, UnknownEquations(file, page => page == "guide" ? new SourceText("docs/physics/guide.md", "    f_c = c/2a  (2)\nand so on (7)\n") : null).Count());
    }

    private static IEnumerable<string> ListedKeys(SourceText sources) => Listed().Matches(sources.Text).Select(m => m.Groups[1].Value);

    private static IEnumerable<string> UnknownKeys(SourceText file, HashSet<string> known) =>
        from line in file.Lines
        from match in Key().Matches(line.Line)
        where !known.Contains(match.Groups[1].Value)
        select $"{file.Path}:{line.Number}: {match.Value} is not in docs/sources.md";

    private static IEnumerable<string> UnknownEquations(SourceText file, Func<string, SourceText?> pageNamed) =>
        from line in file.Lines
        from match in Equation().Matches(line.Line)
        let ending = $"  ({match.Groups[2].Value})"
        where pageNamed(match.Groups[1].Value)?.Lines.Any(l => l.Line.EndsWith(ending, StringComparison.Ordinal)) != true
        select $"{file.Path}:{line.Number}: {match.Value}, but no line of docs/physics/{match.Groups[1].Value}.md ends in '{ending}'";

    [GeneratedRegex(@"^- \*\*\[([A-Za-z]+\d{3,4}[a-z]?)\]\*\* ", RegexOptions.Multiline)]
    private static partial Regex Listed();

    [GeneratedRegex(@"\[([A-Z][A-Za-z]+\d{3,4}[a-z]?)\]")]
    private static partial Regex Key();

    [GeneratedRegex(@"Eqs?\. ([a-z][a-z-]*) \((\d+[a-z]?)\)")]
    private static partial Regex Equation();
}
