using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;
using Xunit;

namespace Hornbook.Bench.Tests.Programmes;

public sealed class ShowTests
{
    private static readonly BenchPlan Plan = GoodBench.Plan with
    {
        Demonstrations =
        [
            GoodBench.BeamWidth with { Showing = new Showing(3, 60.0, IsAside: false) },
            GoodBench.Polarisation with { Showing = new Showing(null, 90.0, IsAside: false) },
            new DistanceDemonstration("away", 0.5, 1.0, 9) { Showing = new Showing(1, 100.0, IsAside: false) },
            new DistanceDemonstration("never", 0.5, 1.0, 9) { Showing = Showing.Usual with { IsAside = true } },
        ],
    };

    [Fact]
    public void Its_order_is_that_of_the_places_and_else_that_of_the_file() =>
        Assert.Equal(["away", GoodBench.Polarisation.Name, GoodBench.BeamWidth.Name], Show.Of(Plan).Select(shown => shown.Name));

    [Fact]
    public void It_takes_as_long_as_those_that_are_shown() => Assert.Equal(250.0, Show.Duration(Plan));

    [Fact]
    public void What_is_to_be_set_follows_from_what_was_shown_before()
    {
        IReadOnlyList<IReadOnlyList<string>> changes = Show.Changes(Plan);
        Assert.Equal(3, changes.Count);
        Assert.Contains(changes[0], change => change.StartsWith("Set the receiver to", StringComparison.Ordinal)); // half a metre from the source
        Assert.Contains(changes[1], change => change.StartsWith("Set the receiver to", StringComparison.Ordinal)); // back from one metre
        Assert.Contains(changes[2], change => change.StartsWith("Set the receiver to", StringComparison.Ordinal)); // no longer rolled, and turned to its first angle
    }
}
