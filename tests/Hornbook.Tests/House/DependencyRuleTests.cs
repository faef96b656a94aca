using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>Physics ← Bench ← Drawing ← the executable, and never the other way.</summary>
public sealed partial class DependencyRuleTests
{
    /// <summary>What each project references of ours: the rule itself.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Hornbook.Physics"] = [],
        ["Hornbook.Bench"] = ["Hornbook.Physics"],
        ["Hornbook.Drawing"] = ["Hornbook.Bench"],
        ["Hornbook"] = ["Hornbook.Bench", "Hornbook.Drawing", "Hornbook.Physics"],
    };

    /// <summary>What the executable has besides its references.</summary>
    private static readonly string[] Rooms = ["Hornbook.Commands", "Hornbook.Tabletop"];

    [Fact]
    public void Every_source_project_has_its_line_in_the_rule() =>
        Assert.Equal(Allowed.Keys.Order(), Checkout.Under("src/", ".csproj").Select(ProjectName).Order());

    [Fact]
    public void Project_files_reference_as_the_rule_says() =>
        Offences.None(Checkout.Under("src/", ".csproj").SelectMany(ReferenceOffences));

    [Fact]
    public void Source_names_only_the_namespaces_to_its_left() =>
        Offences.None(Checkout.Under("src/", ".cs", ".razor").SelectMany(NamespaceOffences));

    [Fact]
    public void Physics_takes_two_packages_and_bench_another()
    {
        // The decisions: mathematics and plane geometry for Physics, TOML for Bench, and nothing else in either.
        Assert.Equal(["MathNet.Numerics", "NetTopologySuite"], Packages("src/Hornbook.Physics/Hornbook.Physics.csproj"));
        Assert.Equal(["Tomlyn"], Packages("src/Hornbook.Bench/Hornbook.Bench.csproj"));
    }

    [Theory]
    [InlineData("N:System.IO")]
    [InlineData("T:System.Console")]
    [InlineData("P:System.DateTime.Now")]
    [InlineData("P:System.DateTime.UtcNow")]
    [InlineData("P:System.Random.Shared")]
    [InlineData("P:System.Globalization.CultureInfo.CurrentCulture")]
    public void Physics_is_built_with_files_console_clock_chance_and_culture_banned(string symbol)
    {
        Assert.Contains(Checkout.File("src/Hornbook.Physics/BannedSymbols.txt").Lines, l => l.Line.StartsWith(symbol + ";", StringComparison.Ordinal));
        Assert.Contains("<AdditionalFiles Include=\"BannedSymbols.txt\"", Checkout.File("src/Hornbook.Physics/Hornbook.Physics.csproj").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Physics_with_a_bench_is_seen()
    {
        SourceText project = new(
            "src/Hornbook.Physics/Hornbook.Physics.csproj",
            "<Project><ItemGroup><ProjectReference Include=\"../Hornbook.Bench/Hornbook.Bench.csproj\" /></ItemGroup></Project>");
        Assert.Single(ReferenceOffences(project));
        Assert.Single(NamespaceOffences(new SourceText("src/Hornbook.Physics/Vector.cs", "using Hornbook.Bench.Layout;\n")));
        Assert.Single(NamespaceOffences(new SourceText("src/Hornbook.Physics/Vector.cs", "    private Hornbook.Drawing.Figure _figure;\n")));
        Assert.Single(NamespaceOffences(new SourceText("src/Hornbook.Drawing/Figure.cs", "using Hornbook.Commands;\n")));
        Assert.Empty(NamespaceOffences(new SourceText("src/Hornbook.Bench/Files/A.cs", "using Hornbook.Physics.Guides;\n")));
    }

    private static IEnumerable<string> ReferenceOffences(SourceText project)
    {
        string[] references = [.. XDocument.Parse(project.Text).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value)).Order(StringComparer.Ordinal)];
        string[] allowed = Allowed[ProjectName(project)];
        return references.SequenceEqual(allowed)
            ? []
            : [$"{project.Path}: references [{string.Join(", ", references)}], the rule says [{string.Join(", ", allowed)}]"];
    }

    // A room may also use what the rooms to its left use: Drawing sees Physics through Bench.
    private static IEnumerable<string> NamespaceOffences(SourceText file)
    {
        string own = file.Path.Split('/')[1];
        HashSet<string> reachable = [own, .. own == "Hornbook" ? Rooms : [], .. Reachable(own)];
        return file.Lines
            .Where(l => !l.Line.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .SelectMany(l => OurNamespace().Matches(l.Line).Select(m => (l.Number, Name: m.Value)))
            .Where(found => !reachable.Contains(found.Name))
            .Select(found => $"{file.Path}:{found.Number}: names {found.Name}, which is not to the left of {own}");
    }

    private static IEnumerable<string> Reachable(string project) =>
        Allowed[project].SelectMany(reference => Reachable(reference).Append(reference));

    private static IEnumerable<string> Packages(string project) =>
        XDocument.Parse(Checkout.File(project).Text).Descendants("PackageReference").Select(p => p.Attribute("Include")!.Value);

    private static string ProjectName(SourceText project) => Path.GetFileNameWithoutExtension(project.Path);

    [GeneratedRegex(@"\bHornbook\.(Physics|Bench|Drawing|Commands|Tabletop)\b")]
    private static partial Regex OurNamespace();
}
