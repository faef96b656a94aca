using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Programmes;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Rehearsing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Rehearsing;

public sealed class ShowCurvesTests : IDisposable
{
    private readonly BenchDesk _desk = new(ExampleBench.File);
    private readonly ShowCurves _curves;

    public ShowCurvesTests() => _curves = new ShowCurves(_desk);

    public void Dispose() => _curves.Dispose();

    private IReadOnlyList<Demonstration> Shown => Show.Of(_desk.Now.Plan);

    [Fact]
    public async Task Computes_the_whole_show_and_keeps_it_when_only_the_showing_changes()
    {
        await _curves.CompleteAsync();
        Prediction[] before = [.. Shown.Select(shown => _curves.Of(shown)!)];
        Assert.All(before, Assert.NotNull);
        Assert.Null(_desk.Edit("longer", ShowChanges.Lasting(Shown[1], 300.0)));
        Assert.Null(_desk.Edit("later", ShowChanges.Moved(_desk.Now.Plan, Shown[0], 1)));
        Assert.All(Shown, shown => Assert.Contains(before, prediction => ReferenceEquals(prediction.Curve, _curves.Of(shown)?.Curve)));
    }

    [Fact]
    public async Task Computes_anew_when_the_bench_stands_otherwise_even_while_it_computes()
    {
        Task first = _curves.CompleteAsync();
        Assert.Null(_desk.Edit("moving", [BenchChange.ToText("receiver.x", "100 cm")]));
        await first;
        await _curves.CompleteAsync();
        Assert.All(Shown, shown => Assert.Equal(1.0, _curves.Of(shown)!.Curve.Points[0].Setting.Receiver.Pose.Position.X, shown.Name == "distance-law" ? 0.2 : 1e-9));
    }

    [Fact]
    public async Task Stops_when_asked_and_goes_on_when_asked()
    {
        Task work = _curves.CompleteAsync();
        _curves.Stop();
        await work;
        Assert.Null(_curves.Computing);
        await _curves.CompleteAsync();
        Assert.All(Shown, shown => Assert.NotNull(_curves.Of(shown)));
    }
}
