using System.Text.RegularExpressions;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed partial class FindingsPageTests
{
    [Fact]
    public void Every_finding_is_in_the_table_of_the_page_and_no_other()
    {
        string[] files = Directory.GetFiles(Repository.At("src", "Hornbook.Bench", "Findings"), "*.cs");
        IEnumerable<string> inCode = files.SelectMany(file => Literal().Matches(File.ReadAllText(file))).Select(match => match.Groups[1].Value);
        IEnumerable<string> onPage = Row().Matches(File.ReadAllText(Repository.At("docs", "demonstrations.md"))).Select(match => match.Groups[1].Value);
        Assert.Equal(inCode.Distinct().Order(StringComparer.Ordinal), onPage.Order(StringComparer.Ordinal));
    }

    /// <summary>Identifiers are the only literals of this shape there; "emission" has no hyphen.</summary>
    [GeneratedRegex("\"([a-z]+(?:-[a-z]+)+|emission)\"")]
    private static partial Regex Literal();

    [GeneratedRegex("^\\| `([a-z-]+)` \\|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
