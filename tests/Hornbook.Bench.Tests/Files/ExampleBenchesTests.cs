using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class ExampleBenchesTests
{
    public static TheoryData<string> Examples => [.. Directory.GetFiles(Repository.At("examples"), "*.toml").Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_loads_with_four_kinds_of_demonstration_and_more(string name)
    {
        BenchFile file = BenchFile.Read(Repository.At("examples", name));

        Assert.Empty(file.Problems);
        Assert.True(file.Plan!.Demonstrations.Select(shown => shown.GetType()).Distinct().Count() >= 4);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Nothing_spoils_or_weakens_an_example(string name)
    {
        BenchFile file = BenchFile.Read(Repository.At("examples", name));

        Assert.DoesNotContain(BenchFindings.Of(file.Plan!, cancellation: TestContext.Current.CancellationToken), finding => finding.Severity != Severity.Note);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_antenna_of_an_example_is_shown(string name)
    {
        BenchFile file = BenchFile.Read(Repository.At("examples", name));
        string[] shown = [.. file.Plan!.Demonstrations.OfType<AntennaChangeDemonstration>().SelectMany(change => change.Antennas)];

        Assert.All(file.Plan.Antennas, antenna => Assert.Contains(antenna.Name, shown));
    }
}
