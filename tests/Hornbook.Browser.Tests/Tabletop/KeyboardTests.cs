using Hornbook.Physics;
using Hornbook.Tabletop;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class KeyboardTests(ServedPage served)
{
    [Fact]
    public async Task Tab_reaches_everything_that_can_be_moved_typed_or_pressed()
    {
        BenchPage page = await served.OpenAsync();
        await page.RestAsync(); // while it is looked over, there is a button more
        HashSet<string> reached = [];
        // There are some 45 stops; a page without a way out of one of them would not get round in 100.
        for (int i = 0; i < 100; i++)
        {
            await page.Window.Keyboard.PressAsync("Tab");
            reached.Add(await page.Window.EvaluateAsync<string>("() => document.activeElement.id || document.activeElement.tagName"));
        }

        string[] wanted = await page.Window.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('[data-grip], input, select, button:not(:disabled)')].map(e => e.id)");
        // derived: each end in two views with a knob in each, 8; two dials; two times an antenna and six typed numbers; sound and volume;
        // snap, two units, ruler, beams, strength, larger; the kind of a new panel and adding it; seven numbers of the reading and five of the bench that can be asked why.
        Assert.Equal(8 + 2 + 14 + 2 + 7 + 2 + 7 + 5, wanted.Length);
        Assert.Empty(wanted.Except(reached));
        Assert.Contains("SUMMARY", reached);
    }

    [Fact]
    public async Task Each_key_moves_what_has_the_focus_as_the_page_lists_it()
    {
        BenchPage page = await served.OpenAsync();
        // 1 cm, with Shift 1 mm; 5°, with Shift 1°: our own choice.
        await Moves("receiver-plan", "ArrowLeft", "receiver-along", -1.0);
        await Moves("receiver-plan", "Shift+ArrowLeft", "receiver-along", -0.1);
        await Moves("receiver-plan", "ArrowUp", "receiver-left", 1.0);
        await Moves("receiver-elevation", "ArrowDown", "receiver-height", -1.0);
        await Moves("source-plan", "PageUp", "source-height", 1.0);
        await Moves("source-plan", "l", "source-turn", 5.0);
        await Moves("source-plan", "Shift+R", "source-turn", -1.0);
        await Moves("source-turn-knob", "ArrowLeft", "source-turn", 5.0);
        await Moves("source-tilt-knob", "ArrowUp", "source-tilt", 5.0);
        await Moves("source-plan", "d", "source-tilt", -5.0);
        await Moves("receiver-roll-dial", "ArrowRight", "receiver-roll", 5.0);
        await Moves("receiver-plan", "a", "receiver-roll", -5.0);

        async Task Moves(string focused, string key, string field, double change)
        {
            double before = await page.FieldAsync(field);
            await page.Window.FocusAsync($"#{focused}");
            await page.Window.Keyboard.PressAsync(key);
            await page.FieldBecomesAsync(field, before + change, 1e-9);
            await page.Window.Keyboard.PressAsync("Home");
            await page.FieldBecomesAsync(field, before, 1e-9);
            await page.Window.Keyboard.PressAsync("Control+z");
            await page.FieldBecomesAsync(field, before + change, 1e-9);
            await page.Window.Keyboard.PressAsync("Control+z");
            await page.FieldBecomesAsync(field, before, 1e-9);
        }
    }

    [Fact]
    public async Task A_typed_number_moves_it_too()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.FillAsync("#receiver-turn", "150");
        await page.Window.Keyboard.PressAsync("Enter");
        string expected = Shown.Level(Decibels.FromRatio(served.ReadAt(await page.ReceiverAsync()).Link)).ToString();
        await Assertions.Expect(page.Window.Locator("#link")).ToHaveTextAsync(expected);
    }

    [Fact]
    public async Task What_has_the_focus_looks_different()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.Keyboard.PressAsync("Tab");
        foreach (string grip in new[] { "#receiver-plan", "#receiver-turn-knob", "#receiver-roll-dial" })
        {
            byte[] without = await ShotAsync(page, grip);
            await page.Window.FocusAsync(grip);
            byte[] with = await ShotAsync(page, grip);
            Assert.False(without.AsSpan().SequenceEqual(with), $"{grip} looks the same with and without the keyboard");
        }
    }

    [Fact]
    public async Task The_reading_is_spoken_once_things_rest()
    {
        BenchPage page = await served.OpenAsync();
        ILocator spoken = page.Window.Locator("#spoken");
        await Assertions.Expect(spoken).ToHaveAttributeAsync("aria-live", "polite");
        await page.RestAsync();
        // Longer than the page waits for things to rest: nothing has moved, so that nothing is spoken however late it is.
        await Task.Delay(TimeSpan.FromSeconds(1.0), TestContext.Current.CancellationToken);
        Assert.Equal(string.Empty, await page.TextAsync("spoken"));

        string left = await page.Window.InputValueAsync("#receiver-left");
        await page.Window.FocusAsync("#receiver-plan");
        await page.Window.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(page.Window.Locator("#receiver-left")).Not.ToHaveValueAsync(left);
        await Assertions.Expect(spoken).ToContainTextAsync($"{await page.TextAsync("tone")} Hz");
    }

    private static Task<byte[]> ShotAsync(BenchPage page, string selector) => page.Window.Locator(selector).ScreenshotAsync();
}
