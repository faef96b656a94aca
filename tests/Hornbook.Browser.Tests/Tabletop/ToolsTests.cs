using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class ToolsTests(ServedPage served)
{
    private double FiledCm => 100.0 * served.Scene.Plan.Receiver.Pose.Position.X;

    [Fact]
    public async Task A_drag_snaps_to_centimetres_unless_alt_is_held_or_the_switch_is_off()
    {
        BenchPage page = await served.OpenAsync();
        await page.DragAsync("#receiver-plan", -123, 0);
        // derived: 12.3 cm to the left are 12 in whole centimetres.
        await page.FieldBecomesAsync("receiver-along", FiledCm - 12.0, 1e-9);
        await page.Window.Keyboard.PressAsync("Control+z");
        await page.FieldBecomesAsync("receiver-along", FiledCm, 1e-9);

        await page.Window.Keyboard.DownAsync("Alt");
        await page.DragAsync("#receiver-plan", -123, 0);
        await page.Window.Keyboard.UpAsync("Alt");
        // Within 1.5 mm: half a pixel at each end of the drag.
        await page.FieldBecomesAsync("receiver-along", FiledCm - 12.3, 0.15);
        await page.Window.Keyboard.PressAsync("Control+z");
        await page.FieldBecomesAsync("receiver-along", FiledCm, 1e-9);

        await page.Window.UncheckAsync("#snap");
        await page.DragAsync("#receiver-plan", -123, 0);
        await page.FieldBecomesAsync("receiver-along", FiledCm - 12.3, 0.15);
    }

    [Fact]
    public async Task Inches_are_remembered_by_the_browser()
    {
        string address = await served.ServeAsync();
        BenchPage page = await served.OpenAsync(address: address);
        await page.Window.ClickAsync("#unit-in");
        // derived: an inch is 2.54 cm; fields show two decimals.
        await page.FieldBecomesAsync("receiver-along", Math.Round(FiledCm / 2.54, 2), 1e-9);
        await page.Window.ReloadAsync();
        await page.Window.WaitForSelectorAsync("main[data-ready=yes]");
        await Assertions.Expect(page.Window.Locator("#unit-in")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Window.FillAsync("#receiver-along", "40");
        await page.Window.Keyboard.PressAsync("Enter");
        await page.Window.ClickAsync("#unit-cm");
        await page.FieldBecomesAsync("receiver-along", 101.6, 1e-9);
    }

    [Fact]
    public async Task The_ruler_measures_between_any_two_places()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#measure");
        Ruler mouths = new(served.Scene.Plan.Source.Pose.Position, served.Scene.Plan.Receiver.Pose.Position);
        await Assertions.Expect(page.Window.Locator("#measured")).ToHaveTextAsync(mouths.Measured(served.Scene.Source.Wavelength));
        await page.DragAsync("#ruler-to-plan", -300, -200);
        Ruler dragged = mouths.With(RulerEnd.To, mouths.To + new Vector(-0.3, 0.2, 0.0));
        await Assertions.Expect(page.Window.Locator("#measured")).ToHaveTextAsync(dragged.Measured(served.Scene.Source.Wavelength));
        Assert.True(await page.Window.IsDisabledAsync("#undo"));
    }

    [Fact]
    public async Task Another_antenna_in_the_hand_is_read_at_once()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.SelectOptionAsync("#source-antenna", "small-horn");
        string expected = Shown.Level(Decibels.FromRatio(served.Scene.Read(served.Scene.Plan.Source with { Antenna = "small-horn" }, served.Scene.Plan.Receiver).Link)).ToString();
        await Assertions.Expect(page.Window.Locator("#link")).ToHaveTextAsync(expected);
        await Assertions.Expect(page.Window.Locator("#moved")).ToContainTextAsync("down");
        await page.Window.ClickAsync("#undo");
        await Assertions.Expect(page.Window.Locator("#source-antenna")).ToHaveValueAsync("large-horn");
    }

    [Fact]
    public async Task Beams_are_drawn_as_wide_as_half_power_and_turn_with_the_hand()
    {
        BenchPage page = await served.OpenAsync();
        Assert.Equal(0, await page.Window.Locator(".beam").CountAsync());
        await page.Window.ClickAsync("#beams");
        double edge = BeamEdge.HalfPower(served.Scene.Source, new Vector(0.0, 1.0, 0.0))!.Value * 180.0 / Math.PI;
        string said = await page.Window.Locator("#beam-source-plan text").TextContentAsync() ?? string.Empty;
        // To a tenth of a degree, as it is written.
        Close.Absolute(2.0 * edge, double.Parse(said.Split(' ')[2].TrimEnd('°', ','), System.Globalization.CultureInfo.InvariantCulture), 0.051);

        string? before = await page.Window.GetAttributeAsync("#beam-source-plan path", "d");
        await page.Window.FillAsync("#source-turn", "20");
        await page.Window.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Window.Locator("#beam-source-plan path")).Not.ToHaveAttributeAsync("d", before!);
        await page.Window.ScreenshotAsync(new PageScreenshotOptions { Path = Repository.At("artifacts", "screenshots", "beams.png") });
    }

    [Fact]
    public async Task The_drawing_grows_and_a_drag_in_it_is_still_to_scale()
    {
        BenchPage page = await served.OpenAsync(Screen.Phone);
        float before = await page.ScaleAsync();
        await page.Window.ClickAsync("#larger");
        await page.Window.ClickAsync("#larger");
        await Assertions.Expect(page.Window.Locator(".frame")).ToHaveClassAsync("frame zoom-2");
        // derived: the style sheet's second step is 225 %; the frame's border takes a pixel or two.
        Close.Relative(2.25, await page.ScaleAsync() / before, 0.02);
        await page.Window.Locator("#source-plan").ScrollIntoViewIfNeededAsync();
        await page.DragAsync("#source-plan", 60, 0);
        await page.FieldBecomesAsync("source-along", (100.0 * served.Scene.Plan.Source.Pose.Position.X) + 6.0, 1e-9);
    }
}
