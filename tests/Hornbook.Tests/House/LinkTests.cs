using System.Text.RegularExpressions;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A link within the checkout leads to something.</summary>
public sealed partial class LinkTests
{
    [Fact]
    public void Every_link_between_pages_leads_somewhere() =>
        Offences.None(Checkout.Pages.SelectMany(page => Dead(page, path => File.Exists(path) || Directory.Exists(path))));

    [Fact]
    public void Every_page_is_in_the_index()
    {
        string index = Checkout.File("docs/README.md").Text;
        Offences.None(Checkout.Under("docs/", ".md")
            .Where(page => page.Path != "docs/README.md" && !page.Path.StartsWith("docs/decisions/", StringComparison.Ordinal))
            .Where(page => !index.Contains($"]({page.Path["docs/".Length..]})", StringComparison.Ordinal))
            .Select(page => $"docs/README.md: no link to {page.Path}"));
    }

    [Fact]
    public void A_dead_link_is_seen() =>
        Assert.Single(Dead(new SourceText("docs/a.md", "[here](b.md#part), [there](https://example.org), ![gone](images/c.png)"), path => path.EndsWith("b.md", StringComparison.Ordinal)));

    private static IEnumerable<string> Dead(SourceText page, Func<string, bool> exists) =>
        from line in page.Lines
        from match in Link().Matches(line.Line)
        let target = match.Groups[1].Value.Split('#')[0]
        where target.Length > 0 && !target.Contains("://", StringComparison.Ordinal) && !exists(Path.Combine(Repository.At(page.Folder), target))
        select $"{page.Path}:{line.Number}: {target} is not there";

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();
}
