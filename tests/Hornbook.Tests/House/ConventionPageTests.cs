using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>Each line of docs/conventions.md has a test that would notice if the code changed its mind.</summary>
public sealed partial class ConventionPageTests
{
    private static string[] Stated => [.. Line().Matches(Checkout.File("docs/conventions.md").Text).Select(m => m.Groups[1].Value)];

    [Fact]
    public void Conventions_are_numbered_from_one_without_gaps() =>
        Assert.Equal(Enumerable.Range(1, Stated.Length).Select(n => $"C{n}"), Stated);

    [Fact]
    public void Every_convention_has_a_test_of_its_number() =>
        Offences.None(Untested(Stated, Checkout.File("tests/Hornbook.Physics.Tests/ConventionsTests.cs").Text));

    [Fact]
    public void Every_convention_cited_is_stated() =>
        Offences.None(Checkout.Under("src/", ".cs", ".razor").SelectMany(f => Uncited(f, Stated)));

    [Fact]
    public void A_convention_without_a_test_or_a_line_is_seen()
    {
        Assert.Single(Untested(["C1", "C2"], "[Fact]\npublic void C1_goes_out_as_minus_jkr()"));
        Assert.Single(Uncited(new SourceText("src/A.cs", "/// Convention: C77."), ["C7"]));
        Assert.Empty(Uncited(new SourceText("src/A.cs", "/// Conventions C7, TE10."), ["C7"]));
    }

    private static IEnumerable<string> Untested(IEnumerable<string> stated, string tests) =>
        stated.Where(c => !Regex.IsMatch(tests, $@"\[(Fact|Theory)\][^;{{]*\bvoid {c}_")).Select(c => $"docs/conventions.md: {c} has no test called {c}_…");

    private static IEnumerable<string> Uncited(SourceText file, IReadOnlyCollection<string> stated) =>
        from line in file.Lines
        where line.Line.Contains("onvention", StringComparison.Ordinal)
        from match in Cited().Matches(line.Line)
        where !stated.Contains(match.Value)
        select $"{file.Path}:{line.Number}: {match.Value} is not in docs/conventions.md";

    [GeneratedRegex(@"^- \*\*(C\d+)\*\* ", RegexOptions.Multiline)]
    private static partial Regex Line();

    [GeneratedRegex(@"\bC\d+\b")]
    private static partial Regex Cited();
}
