using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Tabletop;
using Hornbook.Testing;

namespace Hornbook.Tests.Tabletop;

/// <summary>The bench that is shipped, ready to compute; computed once for all tests.</summary>
internal static class ExampleBench
{
    internal const string Name = "evening-bench.toml";

    internal static Scene Scene { get; } =
        Scene.Of(BenchFile.Read(Repository.At("examples", Name)).Plan ?? throw new InvalidDataException("the example has problems"));

    internal static LoadedBench Loaded { get; } = new(Scene, Name);

    internal static BenchSession Session() => new(Loaded);
}
