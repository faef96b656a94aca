using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Files;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>Demonstrations with panels, from the text to the plan.</summary>
public sealed class DemonstrationTablesTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    private static readonly string Things = string.Concat(new[] { "a", "b" }.Select(name =>
        $"\n[panels.{name}]\nkind = \"metal plate\"\nwidth = \"30 cm\"\nheight = \"30 cm\"\naside = true\nx = \"70 cm\"\nz = \"25 cm\"\n"));

    [Fact]
    public void A_closed_box_has_its_panel() => Assert.Equal(new ClosedBoxDemonstration("d", "a"), Only("closed box", "panel = \"a\""));

    [Fact]
    public void Brewsters_angle_has_its_sheet_its_angles_and_perhaps_a_screen()
    {
        BrewsterDemonstration bare = Assert.IsType<BrewsterDemonstration>(Only("brewster angle", "panel = \"a\"", "from = \"35 deg\"", "to = \"75 deg\"", "points = 9"));
        BrewsterDemonstration screened = Assert.IsType<BrewsterDemonstration>(Only("brewster angle", "panel = \"a\"", "screen = \"b\"", "from = \"35 deg\"", "to = \"75 deg\""));
        Assert.Equal(new BrewsterDemonstration("d", "a", 35.0 * Degree, 75.0 * Degree, 9), bare);
        Assert.Equal(("b", 121), (screened.Screen, screened.Points));
    }

    [Fact]
    public void Half_mirrors_have_both_and_the_way_of_the_second() => Assert.Equal(
        new HalfMirrorsDemonstration("d", "a", "b", -5e-3, 0.04, 91),
        Only("half mirrors", "first = \"a\"", "second = \"b\"", "from = \"-5 mm\"", "to = \"4 cm\"", "points = 91"));

    [Fact]
    public void A_mirror_with_a_grid_has_gap_and_slant_of_twenty_degrees_unless_said()
    {
        CircularPolarisationDemonstration circular = Assert.IsType<CircularPolarisationDemonstration>(
            Only("circular polarisation", "grid = \"a\"", "mirror = \"b\"", "gap = \"11 mm\"", "from = \"0 deg\"", "to = \"180 deg\""));
        Assert.Equal(("a", "b", 11e-3, 0.0, Math.PI), (circular.Grid, circular.Mirror, circular.Gap, circular.From, circular.To));
        Close.Relative(20.0 * Degree, circular.Incidence, 1e-15);
        GridGapDemonstration gap = Assert.IsType<GridGapDemonstration>(Only("grid gap", "grid = \"a\"", "mirror = \"b\"", "incidence = \"-15 deg\"", "distance = \"40 cm\"", "from = \"4 mm\"", "to = \"17 mm\""));
        Assert.Equal((4e-3, 17e-3, 0.4, null), (gap.From, gap.To, gap.Distance, circular.Distance));
        Close.Relative(-15.0 * Degree, gap.Incidence, 1e-15);
    }

    [Theory]
    [InlineData("closed box", "panel", "")]
    [InlineData("brewster angle", "screen", "panel = \"a\"\nfrom = \"35 deg\"\nto = \"75 deg\"")]
    [InlineData("half mirrors", "second", "first = \"a\"\nfrom = \"0 mm\"\nto = \"4 cm\"")]
    [InlineData("grid gap", "mirror", "grid = \"a\"\nfrom = \"4 mm\"\nto = \"17 mm\"")]
    public void A_panel_that_is_not_there_is_told_with_those_that_are(string kind, string key, string rest)
    {
        FileProblem problem = Assert.Single(Parsed(kind, rest, $"{key} = \"c\"").Problems);
        Assert.Contains($"{key} = \"c\" is not among the panels", problem.Message, StringComparison.Ordinal);
        Assert.Contains("\"a\" or \"b\" fits", problem.Message, StringComparison.Ordinal);
    }

    private static Demonstration Only(string kind, params string[] lines)
    {
        BenchFile file = Parsed(kind, lines);
        Assert.Empty(file.Problems);
        return Assert.Single(file.Plan!.Demonstrations);
    }

    private static BenchFile Parsed(string kind, params string[] lines) =>
        BenchFile.Parse($"{Minimal}{Things}\n[[demonstrations]]\nkind = \"{kind}\"\nname = \"d\"\n{string.Join('\n', lines)}\n", "bench.toml");
}
