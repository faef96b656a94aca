using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Hornbook.Testing;

namespace Hornbook.Tests.Tabletop;

/// <summary>The bench that is shipped, ready to compute; computed once for all tests.</summary>
internal static class ExampleBench
{
    internal const string Name = "evening-bench.toml";

    internal static BenchFile File { get; } = BenchFile.Parse(System.IO.File.ReadAllText(Repository.At("examples", Name)), Name);

    internal static Scene Scene { get; } = Scene.Of(File.Plan ?? throw new InvalidDataException("the example has problems"));

    /// <summary>For pages on which nothing is changed: nothing is ever written there.</summary>
    internal static BenchHome Home { get; } = new(Repository.At("examples", Name), Repository.At("artifacts", "never", Name));

    internal static BenchSession Session(BenchDesk? desk = null)
    {
        BenchDesk shown = desk ?? new BenchDesk(File);
        return new BenchSession(shown, new BenchAdvice(shown));
    }
}
