using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class PanelTouchTests(ServedPage served)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_panel_is_rolled_by_its_dial_with_a_finger_or_a_pointer(bool finger)
    {
        BenchPage page = await served.OpenAsync(finger ? Screen.Phone : Screen.Wide);
        await page.Window.SelectOptionAsync("#panel-kind", "strip grid");
        await page.Window.ClickAsync("#panel-add");
        await page.Window.ClickAsync("#choose-strip-grid");
        ILocator dial = page.Window.Locator("svg.dial.panel");
        await page.RestAsync();
        await dial.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await dial.BoundingBoxAsync())!;
        (float x, float y) top = (box.X + (box.Width / 2), box.Y + (box.Height * 0.1f));
        (float x, float y) right = (box.X + (box.Width * 0.9f), box.Y + (box.Height / 2));
        await (finger ? page.SwipeAsync(top, right) : DragAsync(page.Window, top, right));
        // derived: from the top of the dial to its right is a quarter of a turn clockwise.
        await page.FieldBecomesAsync("panel-roll", 90.0, 0.5);
    }

    [Fact]
    public async Task A_panel_is_moved_turned_and_tilted_with_a_finger()
    {
        BenchPage page = await served.OpenAsync(Screen.Phone);
        await page.Window.SelectOptionAsync("#panel-kind", "strip grid");
        await page.Window.ClickAsync("#panel-add");
        await page.Window.ClickAsync("#choose-strip-grid");
        double along = await page.FieldAsync("panel-along");
        await page.RestAsync();
        await page.Window.Locator(".sheet").ScrollIntoViewIfNeededAsync();
        float scale = await page.ScaleAsync();

        (float x, float y) body = await page.MiddleAsync("#panel-strip-grid-plan");
        await page.SwipeAsync(body, (body.x + (100 * scale), body.y));
        // derived: 10 cm along, to a whole centimetre.
        await page.FieldBecomesAsync("panel-along", along + 10.0, 0.51);

        foreach (string turning in new[] { "turn", "tilt" })
        {
            (float x, float y) knob = await page.MiddleAsync($"#panel-strip-grid-{turning}-knob");
            double before = await page.FieldAsync($"panel-{turning}");
            await page.SwipeAsync(knob, (knob.x, knob.y + (70 * scale)));
            // On its way a knob passes angles that are near enough; it rests where it is once the finger has let go.
            await Assertions.Expect(page.Window.Locator("#undo")).ToHaveAttributeAsync("aria-label", $"Undo {turning}ing 'strip-grid'");
            // derived: the knob is 7 cm behind the middle, so that as much aside is an eighth of a turn.
            await BenchPage.SoonAsync(async () => Assert.InRange(Math.Abs(await page.FieldAsync($"panel-{turning}") - before), 40.0, 50.0));
        }
    }

    private static async Task DragAsync(IPage window, (float X, float Y) from, (float X, float Y) to)
    {
        await window.Mouse.MoveAsync(from.X, from.Y);
        await window.Mouse.DownAsync();
        await window.Mouse.MoveAsync(to.X, to.Y, new MouseMoveOptions { Steps = 10 });
        await window.Mouse.UpAsync();
    }
}
