using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Testing;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>The bench that is shipped, ready to compute.</summary>
internal static class ExampleBench
{
    internal static BenchFile File { get; } = BenchFile.Read(Repository.At("examples", "evening-bench.toml"));

    internal static Scene Scene { get; } = Scene.Of(File.Plan ?? throw new InvalidDataException("the example has problems"));
}
