using System.Text.Json;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>From a move of the pointer to the new drawing and the new tone, in a browser. What is printed goes to docs/performance.md; what is asserted is generous, for a loaded machine.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class LagTests(ServedPage served, ITestOutputHelper output)
{
    // Common practice, no source: a grid of two millimetres each four, half-way between the mouths.
    private const string Grid = """

        [panels.grid]
        kind = "strip grid"
        width = "150 mm"
        height = "150 mm"
        period = "4 mm"
        strip_width = "2 mm"
        x = "80 cm"
        z = "40 cm"
        """;

    // Notes when the pointer moves, when the thing is drawn elsewhere, and when the pitch of the oscillator is set.
    private const string Watch = """
        drawn => {
          const times = { moved: [], drawn: [], heard: [] };
          window.lagTimes = times;
          document.addEventListener('pointermove', () => times.moved.push(performance.now()), true);
          new MutationObserver(() => times.drawn.push(performance.now())).observe(document.querySelector(drawn), { subtree: true, attributes: true });
          const set = AudioParam.prototype.setTargetAtTime;
          AudioParam.prototype.setTargetAtTime = function (value, when, constant) {
            if (value > 20) { times.heard.push(performance.now()); }
            return set.call(this, value, when, constant);
          };
        }
        """;

    [Fact]
    public async Task A_drag_is_drawn_while_it_goes_on()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#sound");
        await page.DragAsync("#receiver-plan", -200, 80, steps: 120);
        await page.FieldBecomesAsync("receiver-along", 100.0 * (served.Scene.Plan.Receiver.Pose.Position.X - 0.200), 0.15);
        double[] milliseconds = await page.Window.EvaluateAsync<double[]>("async () => (await import('./tabletop/hands.js')).roundTrips");
        Print("drawn, no panel", milliseconds);
        Assert.NotEmpty(milliseconds);
        // Generous: a hand notices a drawing that lags a quarter of a second behind.
        Assert.InRange(Quantile(milliseconds, 0.5), 0.0, 250.0);
    }

    [Theory]
    [InlineData("receiver-plan")]
    [InlineData("panel-grid-plan")]
    public async Task With_a_grid_on_the_bench_drawing_and_tone_follow_the_hand(string thing)
    {
        string file = served.NewFile();
        await File.AppendAllTextAsync(file, Grid, TestContext.Current.CancellationToken);
        BenchPage page = await served.OpenAsync(address: await served.ServeAsync(file));
        await page.Window.UncheckAsync("#snap");
        await page.Window.ClickAsync("#sound");
        await Assertions.Expect(page.Window.Locator("#findings progress")).ToHaveCountAsync(0);
        await page.Window.EvaluateAsync(Watch, $"#{thing}");

        (float x, float y) = await page.MiddleAsync($"#{thing}");
        await page.Window.Mouse.MoveAsync(x, y);
        await page.Window.Mouse.DownAsync();
        for (int step = 1; step <= 60; step++)
        {
            await page.Window.Mouse.MoveAsync(x + step, y + (0.5f * step));
            await Task.Delay(60, TestContext.Current.CancellationToken); // so that it is known which move a drawing belongs to
        }

        await page.Window.Mouse.UpAsync();
        JsonElement times = (await page.Window.EvaluateAsync<JsonElement?>("() => window.lagTimes"))!.Value;
        double[] moved = [.. Of("moved").Skip(1)], drawn = Lags(moved, Of("drawn")), heard = Lags(moved, Of("heard"));
        Print($"{thing} drawn", drawn);
        Print($"{thing} heard", heard);
        Assert.True(drawn.Length > 30 && heard.Length > 30, $"{drawn.Length} drawings and {heard.Length} tones for {moved.Length} moves");
        Assert.InRange(Quantile(heard, 0.5), 0.0, 250.0);

        double[] Of(string what) => [.. times.GetProperty(what).EnumerateArray().Select(time => time.GetDouble())];
    }

    // From each move to the first thing that followed before the next move; moves that nothing followed in time count as long as there was.
    private static double[] Lags(double[] moved, double[] followed) =>
    [
        .. moved.Zip(moved.Skip(1)).Select(pair => followed.Where(time => time > pair.First && time <= pair.Second).DefaultIfEmpty(pair.Second).First() - pair.First)
    ];

    private static double Quantile(double[] values, double share) => values.Order().ElementAt((int)(share * (values.Length - 1)));

    private void Print(string what, double[] milliseconds) => output.WriteLine(
        $"{what}: {milliseconds.Length} moves, median {Quantile(milliseconds, 0.5):F1} ms, 95 % {Quantile(milliseconds, 0.95):F1} ms, longest {milliseconds.Max():F1} ms");
}
