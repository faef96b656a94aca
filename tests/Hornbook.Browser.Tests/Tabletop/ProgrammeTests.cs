using System.Diagnostics;
using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Programmes;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class ProgrammeTests(ServedPage served)
{
    private async Task<(IPage Window, string Path)> OpenAsync(string view)
    {
        string path = served.NewFile();
        IPage window = await served.WindowAsync(Screen.Wide);
        await window.GotoAsync($"{await served.ServeAsync(path)}/{view}");
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        return (window, path);
    }

    private static Task SoonInFileAsync(string path, Action<IReadOnlyList<Demonstration>> check) => BenchPage.SoonAsync(() =>
    {
        check(Show.Of(BenchFile.Read(path).Plan!));
        return Task.CompletedTask;
    });

    private static async Task<TimeSpan> LeftAsync(IPage window) =>
        TimeSpan.ParseExact(await window.InnerTextAsync("#item-left"), @"m\:ss", CultureInfo.InvariantCulture);

    [Fact]
    public async Task A_show_is_chosen_ordered_and_timed_by_keys_alone_and_kept_in_the_file()
    {
        (IPage window, string path) = await OpenAsync("programme");
        await window.FocusAsync("#later-beam-width");
        await window.Keyboard.PressAsync("Enter");
        await window.FocusAsync("#in-distance-law");
        await window.Keyboard.PressAsync("Space");
        // What changes its place loses the keyboard: whoever types there waits until it stands where it was put.
        await Assertions.Expect(window.Locator(".show-item .what strong")).ToHaveTextAsync(["gain", "beam-width", "polarisation"]);
        await window.FocusAsync("#minutes-gain");
        await window.Keyboard.PressAsync("Control+a");
        await window.Keyboard.TypeAsync("4.5");
        await window.Keyboard.PressAsync("Tab");

        await SoonInFileAsync(path, show =>
        {
            Assert.Equal(["gain", "beam-width", "polarisation"], show.Select(shown => shown.Name));
            Assert.Equal(270.0, show[0].Showing.Duration);
        });
        Assert.Contains("- what is shown", await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken), StringComparison.Ordinal);

        // derived: 4.5 minutes and twice the usual three
        await Assertions.Expect(window.Locator("#show-length")).ToHaveTextAsync("3 demonstrations, 10.5 minutes.");
        await window.Keyboard.PressAsync("Control+z");
    }

    [Fact]
    public async Task A_rehearsal_sounds_as_its_curve_says_where_it_is_held()
    {
        (IPage window, string path) = await OpenAsync("programme");
        Demonstration polarisation = Show.Of(BenchFile.Read(path).Plan!).Single(shown => shown.Name == "polarisation");
        Curve curve = Curve.Of(served.Scene, polarisation, cancellation: TestContext.Current.CancellationToken);
        await window.ClickAsync("#rehearse-polarisation");
        await window.WaitForSelectorAsync("[aria-label='Rehearsal of polarisation'][data-ready=yes]");
        const int Held = 40;
        await window.Locator("#rehearsed-place").FillAsync(Held.ToString(CultureInfo.InvariantCulture));
        await window.ClickAsync("#sound");
        double expected = curve.Points[Held].Reading.Heard.Tone;

        // Five cents, and what the noise of the bench makes it wander.
        Recording recording = await Recording.TakeAsync(window, seconds: 1.2);
        Assert.InRange(Math.Abs(recording.CentsFrom(expected)), 0.0, 5.0 + (3.0 * curve.Points[Held].Reading.Heard.JitterCents));
        await window.Locator("h1").ClickAsync();
        await window.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(window.Locator("#rehearsed-setting")).ToContainTextAsync("41°");
        await window.Keyboard.PressAsync("Space");
        await Assertions.Expect(window.Locator("#rehearse-run")).ToHaveTextAsync("Hold");
        await Assertions.Expect(window.Locator("#rehearsed-setting")).ToContainTextAsync("90°");
        Assert.Equal(BenchFile.Read(path).Text, ExampleBench.File.Text);
    }

    [Fact]
    public async Task A_show_is_performed_by_keys_and_a_window_that_is_opened_again_is_at_the_same_item()
    {
        (IPage window, _) = await OpenAsync("perform");
        await Assertions.Expect(window.Locator("#item")).ToHaveTextAsync("Beam width");
        Stopwatch watch = Stopwatch.StartNew();
        await window.Keyboard.PressAsync("t");
        await Assertions.Expect(window.Locator("#clock")).ToHaveTextAsync("Stop the clock");
        await BenchPage.SoonAsync(async () =>
        {
            double left = (await LeftAsync(window)).TotalSeconds;
            // derived: three minutes less what has gone by, of which the page, on a busy machine, knows later than we do.
            Assert.InRange(left, 180.0 - watch.Elapsed.TotalSeconds, 178.0);
        });
        await window.Keyboard.PressAsync("PageDown");
        await window.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(window.Locator("#item")).ToHaveTextAsync("Distance law");
        await window.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(window.Locator("#item")).ToHaveTextAsync("Gain");
        await window.Keyboard.PressAsync("l");
        await Assertions.Expect(window.Locator("main.bright")).ToHaveCountAsync(1);
        await Assertions.Expect(window.Locator("#hear")).ToContainTextAsync("Hz");

        await window.ReloadAsync();
        await window.WaitForSelectorAsync("main.bright[data-ready=yes]");
        await Assertions.Expect(window.Locator("#item")).ToHaveTextAsync("Gain");
        await Assertions.Expect(window.Locator("#clock")).ToHaveTextAsync("Stop the clock");
    }
}
