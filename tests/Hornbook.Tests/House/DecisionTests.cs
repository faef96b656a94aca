using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>Every dependency was decided on, and every decision says what would change our mind.</summary>
public sealed partial class DecisionTests
{
    private static readonly string[] Parts = ["Status", "Context", "Decision", "Consequences", "What would change our mind"];

    private static IEnumerable<SourceText> Decisions => Checkout.Under("docs/decisions/", ".md").Where(f => f.Stem != "README");

    [Fact]
    public void Every_package_is_named_in_a_decision()
    {
        IEnumerable<string> packages = XDocument.Parse(Checkout.File("Directory.Packages.props").Text).Descendants()
            .Where(e => e.Name.LocalName is "PackageVersion" or "GlobalPackageReference").Select(e => e.Attribute("Include")!.Value);
        Offences.None(Undecided(packages, string.Join('\n', Decisions.Select(d => d.Text))));
    }

    [Fact]
    public void Decisions_are_numbered_once_each_without_gaps() =>
        Assert.Equal(Enumerable.Range(1, Decisions.Count()), Decisions.Select(d => int.Parse(d.Stem[..4], System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_decision_has_its_five_parts() => Offences.None(Decisions.SelectMany(MissingParts));

    [Fact]
    public void An_undecided_package_and_a_missing_part_are_seen()
    {
        Assert.Single(Undecided(["Tomlyn", "Tomly"], "We take `Tomlyn`."));
        Assert.Single(MissingParts(new SourceText("docs/decisions/0001-a.md", "## Status\n## Context\n## Decision\n## Consequences\n")));
    }

    private static IEnumerable<string> Undecided(IEnumerable<string> packages, string decisions) =>
        packages.Where(p => !decisions.Contains($"`{p}`", StringComparison.Ordinal)).Select(p => $"Directory.Packages.props: no decision names `{p}`");

    private static IEnumerable<string> MissingParts(SourceText decision) =>
        Parts.Where(part => !Heading().Matches(decision.Text).Any(m => m.Groups[1].Value == part)).Select(part => $"{decision.Path}: no part '## {part}'");

    [GeneratedRegex("^## (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();
}
