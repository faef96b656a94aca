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

    // Three panels, of which each hears the others and the table top: a solution takes 70 to 100 ms on two cores.
    private const string Heavy = """

        [panels.first]
        kind = "metal plate"
        width = "150 mm"
        height = "150 mm"
        x = "80 cm"
        z = "40 cm"

        [panels.second]
        kind = "metal plate"
        width = "150 mm"
        height = "150 mm"
        x = "90 cm"
        y = "20 cm"
        z = "40 cm"
        turn = "40 deg"

        [panels.pane]
        kind = "sheet"
        width = "150 mm"
        height = "150 mm"
        material = "glass"
        thickness = "4 mm"
        x = "1 m"
        y = "-20 cm"
        z = "40 cm"
        turn = "30 deg"
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
        await SoundAsync(page);
        await page.RestAsync();
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
        (double[] drawn, double[] heard) = await DraggedAsync(file, thing);
        Assert.True(drawn.Length > 30 && heard.Length > 30, $"{drawn.Length} drawings and {heard.Length} tones");
        Assert.InRange(Quantile(heard, 0.5), 0.0, 250.0);
    }

    [Fact]
    public async Task On_a_heavy_bench_the_drawing_follows_the_hand_and_the_tone_comes_after()
    {
        string file = served.NewFile();
        string text = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(
            file, text.Replace("[table]", "[table]\nmaterial = \"wood\"\nthickness = \"25 mm\"", StringComparison.Ordinal) + Heavy, TestContext.Current.CancellationToken);
        (double[] drawn, double[] heard) = await DraggedAsync(file, "panel-first-plan");
        Assert.True(drawn.Length > 30, $"{drawn.Length} drawings");
        Assert.InRange(Quantile(drawn, 0.5), 0.0, 250.0);
        Assert.NotEmpty(heard);
    }

    // A thing is dragged in sixty steps with the sound on; how long until it is drawn elsewhere, and until another tone is set.
    private async Task<(double[] Drawn, double[] Heard)> DraggedAsync(string file, string thing)
    {
        BenchPage page = await served.OpenAsync(address: await served.ServeAsync(file));
        await page.Window.UncheckAsync("#snap");
        await SoundAsync(page);
        await page.RestAsync();
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
        await page.Window.WaitForFunctionAsync("() => window.lagTimes.heard.length > 0"); // on a heavy bench it may come after the hand has stopped
        JsonElement times = (await page.Window.EvaluateAsync<JsonElement?>("() => window.lagTimes"))!.Value;
        double[] moved = [.. Of("moved").Skip(1)], drawn = Lags(moved, Of("drawn")), heard = Lags(moved, Of("heard"));
        Print($"{thing} drawn", drawn);
        Print($"{thing} heard", heard);
        output.WriteLine($"{Of("heard").Length} tones for {moved.Length} moves");
        return (drawn, Of("heard").Length > 0 ? heard : []);

        double[] Of(string what) => [.. times.GetProperty(what).EnumerateArray().Select(time => time.GetDouble())];
    }

    private static async Task SoundAsync(BenchPage page)
    {
        await page.Window.ClickAsync("#sound");
        await Assertions.Expect(page.Window.Locator("#sound")).ToHaveAttributeAsync("aria-pressed", "true");
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
