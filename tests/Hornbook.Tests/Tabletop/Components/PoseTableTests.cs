using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed class PoseTableTests : IDisposable
{
    private readonly BunitContext _browser = new();
    private readonly BenchSession _session = ExampleBench.Session();

    public void Dispose() => _browser.Dispose();

    [Fact]
    public void A_typed_number_moves_its_end()
    {
        IRenderedComponent<PoseTable> table = _browser.Render<PoseTable>(p => p.Add(c => c.Session, _session));
        table.Find("#receiver-along").Change("95.5");
        // derived: 95.5 cm.
        Close.Relative(0.955, _session.PoseOf(BenchEnd.Receiver).Position.X, 1e-12);
        Assert.Equal("95.5", table.Find("#receiver-along").GetAttribute("value"));
    }

    [Fact]
    public void Every_field_says_what_it_is_and_in_what_unit()
    {
        IRenderedComponent<PoseTable> table = _browser.Render<PoseTable>(p => p.Add(c => c.Session, _session));
        // derived: two ends, three lengths and three angles each.
        Assert.Equal(2 * 6, table.FindAll("input").Count);
        Assert.All(table.FindAll("input"), input => Assert.Matches(@"^(Source|Receiver): .+ \[(cm|°)\]$", input.GetAttribute("aria-label")!));
    }

    [Fact]
    public void Another_antenna_is_taken_into_the_hand_and_can_be_given_back()
    {
        IRenderedComponent<PoseTable> table = _browser.Render<PoseTable>(p => p.Add(c => c.Session, _session));
        Assert.Equal(_session.Plan.Antennas.Select(a => a.Name), table.FindAll("#source-antenna option").Select(o => o.TextContent));
        table.Find("#source-antenna").Change("small-horn");
        Assert.Equal("small-horn", _session.AntennaOf(BenchEnd.Source));
        Assert.Equal(ExampleBench.Scene.Read(_session.Plan.Source with { Antenna = "small-horn" }, _session.Plan.Receiver), _session.Reading);
        _session.Undo();
        Assert.Equal("large-horn", _session.AntennaOf(BenchEnd.Source));
    }
}
