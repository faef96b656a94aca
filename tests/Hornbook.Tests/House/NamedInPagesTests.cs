using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>What a page names in code letters is there: a namespace, a type with its member, a file. Decisions may name what was not taken, or has gone since.</summary>
public sealed partial class NamedInPagesTests
{
    private static readonly string[] Code = [.. Checkout.Under("src/", ".cs", ".razor", ".csproj").Concat(Checkout.Under("tests/", ".cs", ".csproj")).Where(IsAnother).Select(f => f.Text)];

    private static readonly HashSet<string> Words = [.. Code.SelectMany(text => Word().Matches(text)).Select(match => match.Value)];

    private static readonly HashSet<string> Namespaces = [.. Code.SelectMany(text => Namespace().Matches(text)).Select(match => match.Groups[1].Value)];

    [Fact]
    public void What_pages_name_is_there() => Offences.None(
        Checkout.Pages.Where(page => !page.Path.StartsWith("docs/decisions/", StringComparison.Ordinal) && page.Path != "CHANGELOG.md").SelectMany(Gone));

    [Theory]
    [InlineData("`Hornbook.Physics.Nowhere`")]
    [InlineData("see `StripGrid.Vanished`")]
    [InlineData("`GoneType`")]
    [InlineData("`src/Hornbook/Gone`")]
    public void What_has_gone_is_seen(string line) => Assert.Single(Gone(new SourceText("docs/a.md", line)));

    [Fact]
    public void What_is_no_name_is_let_be() => Assert.Empty(Gone(new SourceText("docs/a.md", "`GHz`, `kHz/V`, `StripGrid.Period`, `Hornbook.Physics.Panels`, `src/Hornbook/Tabletop`, `half_power`")));

    private static IEnumerable<string> Gone(SourceText page) =>
        from line in page.Lines
        from match in Name().Matches(line.Line)
        let name = match.Groups[1].Value
        where !IsThere(name)
        select $"{page.Path}:{line.Number}: {name} is not there";

    private static bool IsThere(string name) =>
        name.Contains('/', StringComparison.Ordinal) ? Checkout.Files.Any(f => $"{f.Path}/".StartsWith($"{name.TrimEnd('/')}/", StringComparison.Ordinal))
        : name.StartsWith("Hornbook.", StringComparison.Ordinal) ? Namespaces.Any(space => $"{space}.".StartsWith($"{name}.", StringComparison.Ordinal))
        : name.Split('.').All(Words.Contains);

    private static bool IsAnother(SourceText file) => file.Stem != nameof(NamedInPagesTests);

    // Type names, perhaps with members, and paths from one of our folders; units have no small letter after their first two.
    [GeneratedRegex(@"`((?:[A-Z][A-Za-z]*[a-z]{2}[A-Za-z]*(?:\.[A-Z]\w+)*)|(?:(?:src|tests|docs|examples|benchmarks)/[\w./-]*))`")]
    private static partial Regex Name();

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();
}
