using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class HandsTests(ServedPage served)
{
    private Pose Filed => served.Scene.Plan.Receiver.Pose;

    [Fact]
    public async Task Dragging_the_receiver_moves_it_to_scale_and_reads_what_the_scene_reads_there()
    {
        BenchPage page = await served.OpenAsync();
        await page.DragAsync("#receiver-plan", -120, 60);
        // derived: the pointer went 120 mm to the left and 60 mm down the sheet, which is to the right of the bench.
        // Within 1.5 mm: half a pixel at each end of the drag, and the rounding to whole millimetres.
        await page.FieldBecomesAsync("receiver-along", Cm(Filed.Position.X - 0.120), 0.15);
        await page.FieldBecomesAsync("receiver-left", Cm(Filed.Position.Y - 0.060), 0.15);
        await ReadsAsSceneAsync(page);
    }

    [Fact]
    public async Task Dragging_in_the_elevation_changes_the_height()
    {
        BenchPage page = await served.OpenAsync();
        await page.DragAsync("#receiver-elevation", 0, -50);
        await page.FieldBecomesAsync("receiver-height", Cm(Filed.Position.Z + 0.050), 0.15);
    }

    [Fact]
    public async Task Dragging_the_knob_turns_the_antenna_about_its_mouth()
    {
        BenchPage page = await served.OpenAsync();
        double lever = await page.Window.EvaluateAsync<double>(
            "() => Math.abs(document.querySelector('#receiver-turn-knob .ball').cx.baseVal.value) - 1000 * " + Invariant(Filed.Position.X));
        await page.DragAsync("#receiver-turn-knob", 0, lever);
        // derived: the tail goes as far down the sheet as it stands behind the mouth, 45° clockwise seen from above.
        await page.FieldBecomesAsync("receiver-turn", 180.0 - 45.0, 0.5);
        await page.FieldBecomesAsync("receiver-along", Cm(Filed.Position.X), 0.0);
        await ReadsAsSceneAsync(page);
    }

    [Fact]
    public async Task Rolling_the_dial_a_quarter_leaves_next_to_nothing()
    {
        BenchPage page = await served.OpenAsync();
        LocatorBoundingBoxResult dial = (await page.Window.Locator("svg.dial.receiver").BoundingBoxAsync())!;
        await page.Window.Mouse.MoveAsync(dial.X + (dial.Width / 2), dial.Y + (dial.Height * 0.1f));
        await page.Window.Mouse.DownAsync();
        await page.Window.Mouse.MoveAsync(dial.X + (dial.Width * 0.9f), dial.Y + (dial.Height / 2), new MouseMoveOptions { Steps = 10 });
        await page.Window.Mouse.UpAsync();
        await page.FieldBecomesAsync("receiver-roll", 90.0, 0.5);
        await ReadsAsSceneAsync(page);
    }

    [Fact]
    public async Task A_finger_drags_as_a_pointer_does()
    {
        BenchPage page = await served.OpenAsync(Screen.Phone);
        (float x, float y) = await page.MiddleAsync("#receiver-plan");
        float scale = await page.ScaleAsync();
        await page.SwipeAsync((x, y), (x - (300 * scale), y), steps: 12);
        // Within 4 mm: a pixel of the phone is that wide.
        await page.FieldBecomesAsync("receiver-along", Cm(Filed.Position.X - 0.300), 0.4);
    }

    [Fact]
    public async Task Put_back_restores_what_the_file_says()
    {
        BenchPage page = await served.OpenAsync();
        Assert.True(await page.Window.IsDisabledAsync("#put-back"));
        await page.DragAsync("#source-plan", 40, 40);
        await page.Window.ClickAsync("#put-back");
        await Assertions.Expect(page.Window.Locator("#put-back")).ToBeDisabledAsync();
        await page.FieldBecomesAsync("source-along", Cm(served.Scene.Plan.Source.Pose.Position.X), 0.0);
        await ReadsAsSceneAsync(page);
    }

    private static string Invariant(double number) => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    private static double Cm(double metres) => 100.0 * metres;

    private async Task ReadsAsSceneAsync(BenchPage page) => await BenchPage.SoonAsync(async () =>
    {
        Reading expected = served.ReadAt(await page.ReceiverAsync());
        Assert.Equal(Shown.Level(Decibels.FromRatio(expected.Link)).ToString(), await page.TextAsync("link"));
        Assert.Equal(Shown.Voltage(expected.Heard.AmplifierVoltage).ToString(), await page.TextAsync("amplifier"));
        Assert.Equal(Shown.Tone(expected.Heard.Tone).Number, await page.TextAsync("tone"));
    });
}
