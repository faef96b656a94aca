using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Files;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>Demonstrations of mirrors, fringes, shadows and foci, from the text to the plan.</summary>
public sealed class WaveTablesTests
{
    private const string Plate = "\n[panels.plate]\nkind = \"metal plate\"\nwidth = \"30 cm\"\nheight = \"30 cm\"\naside = true\nx = \"70 cm\"\nz = \"25 cm\"\n";

    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    public static TheoryData<string, Demonstration> Tables { get; } = new()
    {
        { "kind = \"reflection\"\npanel = \"plate\"\nincidence = \"0 deg\"\nfrom = \"0 deg\"\nto = \"180 deg\"\npoints = 5\ndistance = \"40 cm\"", new ReflectionDemonstration("d", "plate", 0.0, 0.0, Math.PI, 5) { Distance = 0.4 } },
        { "kind = \"standing wave\"\npanel = \"plate\"\nfrom = \"0 mm\"\nto = \"60 mm\"", new StandingWaveDemonstration("d", "plate", 0.1, 0.0, 0.06, 121) },
        { "kind = \"standing wave\"\npanel = \"plate\"\nbefore = \"5 cm\"\nfrom = \"0 mm\"\nto = \"60 mm\"", new StandingWaveDemonstration("d", "plate", 0.05, 0.0, 0.06, 121) },
        { "kind = \"slits\"\npanel = \"plate\"\nfrom = \"-180 deg\"\nto = \"180 deg\"", new SlitsDemonstration("d", "plate", -Math.PI, Math.PI, 121) },
        { "kind = \"edge\"\npanel = \"plate\"\nfrom = \"15 cm\"\nto = \"-10 cm\"", new EdgeDemonstration("d", "plate", 0.15, -0.1, 121) },
        { "kind = \"lloyd mirror\"\npanel = \"plate\"\nfrom = \"0 cm\"\nto = \"15 cm\"", new LloydDemonstration("d", "plate", 0.0, 0.15, 121) },
        { "kind = \"lloyd mirror\"\nfrom = \"0 cm\"\nto = \"15 cm\"", new LloydDemonstration("d", null, 0.0, 0.15, 121) },
        { "kind = \"zone plate\"\npanel = \"plate\"\nfrom = \"30 cm\"\nto = \"90 cm\"", new ZonePlateDemonstration("d", "plate", 0.3, 0.9, 121) },
        { "kind = \"dish\"\npanel = \"plate\"\nfrom = \"8 cm\"\nto = \"18 cm\"", new DishDemonstration("d", "plate", 0.08, 0.18, 121) },
    };

    [Theory]
    [MemberData(nameof(Tables), DisableDiscoveryEnumeration = true)]
    public void Each_kind_is_read_with_what_is_left_out(string keys, Demonstration demonstration)
    {
        BenchFile file = Read(keys);

        Assert.Empty(file.Problems);
        Assert.Equal(demonstration, Assert.Single(file.Plan!.Demonstrations));
    }

    [Fact]
    public void The_panel_has_to_be_there()
    {
        FileProblem problem = Assert.Single(Read("kind = \"edge\"\npanel = \"plat\"\nfrom = \"15 cm\"\nto = \"-10 cm\"").Problems);

        Assert.Contains("type \"plate\"", problem.ToString(), StringComparison.Ordinal);
    }

    private static BenchFile Read(string keys) =>
        BenchFile.Parse(Minimal + Plate + "\n[[demonstrations]]\nname = \"d\"\n" + keys + "\n", "bench.toml");
}
