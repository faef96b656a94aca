using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class LagTests(ServedPage served, ITestOutputHelper output)
{
    [Fact]
    public async Task A_drag_is_drawn_while_it_goes_on()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#sound");
        await page.DragAsync("#receiver-plan", -200, 80, steps: 120);
        await page.FieldBecomesAsync("receiver-along", 100.0 * (served.Scene.Plan.Receiver.Pose.Position.X - 0.200), 0.15);
        double[] milliseconds = await page.Window.EvaluateAsync<double[]>("async () => (await import('./tabletop/hands.js')).roundTrips");
        Array.Sort(milliseconds);
        output.WriteLine($"{milliseconds.Length} moves drawn, median {milliseconds[milliseconds.Length / 2]:F1} ms, "
            + $"90 % {milliseconds[milliseconds.Length * 9 / 10]:F1} ms, longest {milliseconds[^1]:F1} ms");
        Assert.NotEmpty(milliseconds);
        // Generous, for a loaded machine: a hand notices a drawing that lags a quarter of a second behind.
        Assert.InRange(milliseconds[milliseconds.Length / 2], 0.0, 250.0);
    }
}
