using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Testing;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>The bench that is shipped, ready to compute.</summary>
internal static class ExampleBench
{
    internal static Scene Scene { get; } =
        Scene.Of(BenchFile.Read(Repository.At("examples", "evening-bench.toml")).Plan ?? throw new InvalidDataException("the example has problems"));
}
