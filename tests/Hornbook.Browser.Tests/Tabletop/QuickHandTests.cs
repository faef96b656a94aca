using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>A hand that does not wait for the drawing, on a page that is answered late: nothing of what it does is lost or taken back.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class QuickHandTests(ServedPage served)
{
    private double ReceiverCm => 100.0 * served.Scene.Plan.Receiver.Pose.Position.X;

    private double SourceCm => 100.0 * served.Scene.Plan.Source.Pose.Position.X;

    [Fact]
    public async Task A_drag_begun_before_the_last_one_is_drawn_holds_its_own_thing()
    {
        BenchPage page = await OpenAsync();
        await page.DragAsync("#source-plan", 40, 40);
        await page.DragAsync("#receiver-plan", -120, 60);
        await page.FieldBecomesAsync("receiver-along", ReceiverCm - 12.0, 0.15);
        await page.FieldBecomesAsync("source-along", SourceCm + 4.0, 0.15);
    }

    [Fact]
    public async Task A_button_pressed_before_the_last_drag_is_drawn_is_about_that_drag()
    {
        BenchPage page = await OpenAsync();
        await page.DragAsync("#source-plan", 40, 40);
        ILocator undo = page.Window.Locator("#undo");
        await Assertions.Expect(undo).ToHaveAttributeAsync("aria-label", "Undo moving the source");
        (float x, float y) = await page.MiddleAsync("#undo");
        await page.DragAsync("#receiver-plan", -120, 60);
        await page.Window.Mouse.ClickAsync(x, y);
        await Assertions.Expect(page.Window.Locator("#redo")).ToHaveAttributeAsync("aria-label", "Redo moving the receiver");
        await page.FieldBecomesAsync("receiver-along", ReceiverCm, 1e-9);
        await page.FieldBecomesAsync("source-along", SourceCm + 4.0, 0.15);
    }

    [Fact]
    public async Task What_is_preferred_before_the_browser_remembers_holds()
    {
        IPage window = await served.WindowAsync(Screen.Wide);
        await window.AddInitScriptAsync(
            """
            window.recalled = [];
            const read = Storage.prototype.getItem;
            Storage.prototype.getItem = function (key) { window.recalled.push(key); return read.call(this, key); };
            """);
        await LateAnswers.BeginAsync(window);
        string address = await served.ServeAsync();
        await window.RunAndWaitForRequestAsync(() => window.GotoAsync(address), request => request.Url.EndsWith("preferences.js", StringComparison.Ordinal));
        await window.UncheckAsync("#snap");
        await window.WaitForFunctionAsync("() => window.recalled.includes('hornbook.unit')");
        // What was recalled is on its way to the program before this click is.
        await window.ClickAsync("#beams");
        await Assertions.Expect(window.Locator("#beam-source-plan")).ToBeVisibleAsync();
        await Assertions.Expect(window.Locator("#snap")).Not.ToBeCheckedAsync();
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        BenchPage page = new(window);
        await page.DragAsync("#receiver-plan", -123, 0);
        // Within 1.5 mm: half a pixel at each end of the drag.
        await page.FieldBecomesAsync("receiver-along", ReceiverCm - 12.3, 0.15);
    }

    [Theory]
    [InlineData("#view-safety", "#view-bench", "#tabletop", "#view-safety")]
    [InlineData("#view-programme", "#to-perform", "#perform", "#to-safety")]
    public async Task A_view_that_is_left_before_it_is_ready_is_left_in_peace(string before, string link, string view, string away)
    {
        BenchPage page = await OpenAsync();
        ILocator bench = page.Window.Locator("main.tabletop[data-ready=yes]"), safety = page.Window.Locator("main.safety");
        await page.Window.ClickAsync(before);
        await page.Window.ClickAsync(link);
        await page.Window.WaitForSelectorAsync($"{view}[data-ready=no]");
        await page.Window.ClickAsync(away);
        await Assertions.Expect(safety).ToBeVisibleAsync();
        await page.Window.ClickAsync("#view-bench");
        await Assertions.Expect(bench).ToBeVisibleAsync();
    }

    private async Task<BenchPage> OpenAsync()
    {
        IPage window = await served.WindowAsync(Screen.Wide);
        await LateAnswers.BeginAsync(window);
        return await ServedPage.ReadyAsync(window, await served.ServeAsync());
    }
}
