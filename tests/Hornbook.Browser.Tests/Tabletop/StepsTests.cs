using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class StepsTests(ServedPage served)
{
    private double FiledCm => 100.0 * served.Scene.Plan.Receiver.Pose.Position.X;

    [Fact]
    public async Task A_drag_is_one_step_by_button_and_by_key()
    {
        BenchPage page = await served.OpenAsync();
        Assert.True(await page.Window.IsDisabledAsync("#undo"));
        await page.DragAsync("#receiver-plan", -150, 0, steps: 20);
        ILocator undo = page.Window.Locator("#undo");
        await Assertions.Expect(undo).ToBeEnabledAsync();
        await Assertions.Expect(undo).ToHaveAttributeAsync("aria-label", "Undo moving the receiver");
        await undo.ClickAsync();
        await page.FieldBecomesAsync("receiver-along", FiledCm, 1e-9);
        await Assertions.Expect(undo).ToBeDisabledAsync();
        await page.Window.Keyboard.PressAsync("Control+Shift+Z");
        // Within 1.5 mm: half a pixel at each end of the drag.
        await page.FieldBecomesAsync("receiver-along", FiledCm - 15.0, 0.15);
        await page.Window.Keyboard.PressAsync("Control+z");
        await page.FieldBecomesAsync("receiver-along", FiledCm, 1e-9);
    }

    [Fact]
    public async Task A_second_window_follows_and_can_undo()
    {
        string address = await served.ServeAsync();
        BenchPage one = await served.OpenAsync(address: address);
        BenchPage other = await served.OpenAsync(address: address);
        await one.DragAsync("#receiver-plan", -100, 0);
        await other.FieldBecomesAsync("receiver-along", FiledCm - 10.0, 0.15);
        await other.Window.ClickAsync("#undo");
        await one.FieldBecomesAsync("receiver-along", FiledCm, 1e-9);
    }

    [Fact]
    public async Task A_move_brings_its_findings_and_the_button_mends_them()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.FillAsync("#receiver-roll", "60");
        await page.Window.Keyboard.PressAsync("Enter");
        ILocator crossed = page.Window.Locator("[data-finding=polarisation-crossed]");
        await Assertions.Expect(crossed).ToBeVisibleAsync();
        await crossed.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(crossed).ToHaveCountAsync(0);
        await page.FieldBecomesAsync("receiver-roll", 0.0, 1e-9);
    }
}
