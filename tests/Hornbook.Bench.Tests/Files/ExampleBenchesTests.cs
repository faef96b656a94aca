using Hornbook.Bench.Files;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class ExampleBenchesTests
{
    public static TheoryData<string> Examples => [.. Directory.GetFiles(Repository.At("examples"), "*.toml").Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_loads_with_its_four_demonstrations(string name)
    {
        BenchFile file = BenchFile.Read(Repository.At("examples", name));

        Assert.Empty(file.Problems);
        Assert.Equal(4, file.Plan!.Demonstrations.Select(shown => shown.GetType()).Distinct().Count());
    }
}
