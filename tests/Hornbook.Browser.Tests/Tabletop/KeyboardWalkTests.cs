using Hornbook.Bench.Files;
using Hornbook.Bench.Programmes;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>An evening without a pointer: everything is reached by Tab from where the step before left the keyboard.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class KeyboardWalkTests(ServedPage served)
{
    [Fact]
    public async Task A_whole_evening_is_prepared_and_given_by_the_keyboard_alone()
    {
        string file = served.NewFile();
        BenchPage page = await served.OpenAsync(address: await served.ServeAsync(file));
        await MoveAsync(page);
        await HearAsync(page);
        await MendAsync(page);
        await AskWhyAsync(page);
        await PutAPanelInAsync(page);
        await SeeTheStrengthAsync(page);
        await RehearseAsync(page, file);
        await PerformAsync(page);
        await LookAtSafetyAsync(page);
        await DesignAsync(page, file);
        await OpenACopyAsync(page, file);
    }

    private static async Task MoveAsync(BenchPage page)
    {
        double along = await page.FieldAsync("receiver-along"), turn = await page.FieldAsync("receiver-turn");
        await PressAsync(page, "#receiver-plan", "ArrowLeft");
        await page.FieldBecomesAsync("receiver-along", along - 1.0, 1e-9); // 1 cm and 5° a press: our own choice
        await page.Window.Keyboard.PressAsync("r");
        await page.FieldBecomesAsync("receiver-turn", turn - 5.0, 1e-9);
        await page.Window.Keyboard.PressAsync("Control+z");
        await page.FieldBecomesAsync("receiver-turn", turn, 1e-9);
        await page.Window.Keyboard.PressAsync("Control+Shift+Z");
        await page.FieldBecomesAsync("receiver-turn", turn - 5.0, 1e-9);
        await PressAsync(page, "#undo", "Enter");
        await page.FieldBecomesAsync("receiver-turn", turn, 1e-9);
        await PressAsync(page, "#redo", "Enter");
        await page.FieldBecomesAsync("receiver-turn", turn - 5.0, 1e-9);
        await TypeAsync(page, "#receiver-turn", "180");
        await TypeAsync(page, "#receiver-roll", "60");
        await page.FieldBecomesAsync("receiver-roll", 60.0, 1e-9);
    }

    private async Task HearAsync(BenchPage page)
    {
        Reading expected = served.ReadAt(await page.ReceiverAsync());
        await Assertions.Expect(page.Window.Locator("#link")).ToHaveTextAsync(Shown.Level(Decibels.FromRatio(expected.Link)).ToString());
        await PressAsync(page, "#sound", "Space");
        await Assertions.Expect(page.Window.Locator("#sound")).ToHaveAttributeAsync("aria-pressed", "true");
        Recording heard = await Recording.TakeAsync(page.Window, seconds: 1.0);

        // Five cents, and what the noise of the bench makes it wander.
        Close.Absolute(0.0, heard.CentsFrom(expected.Heard.Tone), 5.0 + expected.Heard.JitterCents);
        await page.Window.Keyboard.PressAsync("Space");
        await Assertions.Expect(page.Window.Locator("#sound")).ToHaveAttributeAsync("aria-pressed", "false");
    }

    private static async Task MendAsync(BenchPage page)
    {
        ILocator crossed = page.Window.Locator("[data-finding=polarisation-crossed]");
        await Assertions.Expect(crossed.Locator("button.do")).ToBeEnabledAsync();
        await PressAsync(page, "[data-finding=polarisation-crossed] button.do", "Enter");
        await page.FieldBecomesAsync("receiver-roll", 0.0, 1e-9);
        await Assertions.Expect(crossed).ToHaveCountAsync(0);
        await Assertions.Expect(page.Window.Locator("#findings-title")).ToBeFocusedAsync();
    }

    private static async Task AskWhyAsync(BenchPage page)
    {
        await PressAsync(page, "#link", "Enter");
        await Assertions.Expect(page.Window.Locator("#why")).ToBeFocusedAsync();
        await Assertions.Expect(page.Window.Locator("#why-title")).Not.ToBeEmptyAsync();
        await page.Window.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Window.Locator("#link")).ToBeFocusedAsync();
    }

    private static async Task PutAPanelInAsync(BenchPage page)
    {
        await page.TabToAsync("#panel-kind");
        // By arrows: letters that come a second apart, as on a busy machine, are each taken for the first of a name.
        foreach (string _ in PanelText.Kinds.TakeWhile(kind => kind != "strip grid"))
        {
            await page.Window.Keyboard.PressAsync("ArrowDown");
        }

        await Assertions.Expect(page.Window.Locator("#panel-kind")).ToHaveValueAsync("strip grid");
        await PressAsync(page, "#panel-add", "Enter");
        ILocator grid = page.Window.Locator("#panel-strip-grid-plan");
        await Assertions.Expect(grid).ToBeVisibleAsync();
        await PressAsync(page, "#choose-strip-grid", "Enter");
        await page.FieldBecomesAsync("panel-turn", 0.0, 1e-9);
        await PressAsync(page, "#panel-strip-grid-plan", "l");
        await page.FieldBecomesAsync("panel-turn", 5.0, 1e-9);
        await page.Window.Keyboard.PressAsync("f");
        await page.FieldBecomesAsync("panel-turn", -175.0, 1e-9); // derived: half a turn on
        await PressAsync(page, "#flip-strip-grid", "Enter");
        await page.FieldBecomesAsync("panel-turn", 5.0, 1e-9);
        await PressAsync(page, "#stands-strip-grid", "Space");
        await Assertions.Expect(grid).ToHaveCountAsync(0);
    }

    private static async Task SeeTheStrengthAsync(BenchPage page)
    {
        await PressAsync(page, "#strength", "Enter");
        await Assertions.Expect(page.Window.Locator("#strength-plan")).ToBeVisibleAsync();
        await page.Window.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Window.Locator("#strength-plan")).ToHaveCountAsync(0);
    }

    private static async Task RehearseAsync(BenchPage page, string file)
    {
        await GoAsync(page, "#view-programme", "main.programme");
        await PressAsync(page, "#later-beam-width", "Enter");
        await PressAsync(page, "#in-distance-law", "Space");
        await BenchPage.SoonAsync(() =>
        {
            Assert.Equal(["gain", "beam-width", "polarisation"], Show.Of(BenchFile.Read(file).Plan!).Select(shown => shown.Name));
            return Task.CompletedTask;
        });
        await PressAsync(page, "#rehearse-polarisation", "Enter");
        await page.Window.WaitForSelectorAsync("[aria-label='Rehearsal of polarisation'][data-ready=yes]");
        await page.Window.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Window.Locator("#rehearsed-setting")).ToContainTextAsync("1°"); // derived: 91 settings from 0 to 90°
        await PressAsync(page, "#rehearse-run", "Enter");
        await Assertions.Expect(page.Window.Locator("#rehearse-run")).ToHaveTextAsync("Hold");
        await page.Window.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Window.Locator("#rehearse-run")).ToHaveTextAsync("Play the sweep");
    }

    private static async Task PerformAsync(BenchPage page)
    {
        await GoAsync(page, "#to-perform", "main.hall");
        await Assertions.Expect(page.Window.Locator("#item")).ToHaveTextAsync("Gain");
        await page.Window.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(page.Window.Locator("#item")).ToHaveTextAsync("Beam width");
        await page.Window.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(page.Window.Locator("#item")).ToHaveTextAsync("Gain");
        await PressAsync(page, "#next", "Enter");
        await Assertions.Expect(page.Window.Locator("#item")).ToHaveTextAsync("Beam width");
        await Assertions.Expect(page.Window.Locator("#hear")).ToContainTextAsync("Hz");
    }

    private static async Task LookAtSafetyAsync(BenchPage page)
    {
        await GoAsync(page, "#to-safety", "main.safety");
        await Assertions.Expect(page.Window.Locator("#keep-away")).ToContainTextAsync("Keep");
    }

    private static async Task DesignAsync(BenchPage page, string file)
    {
        await GoAsync(page, "#view-antennas", "main.design:not(.safety)");
        await TypeAsync(page, "#wish-gain", "12");
        await PressAsync(page, "#wish-horn", "Enter");
        await Assertions.Expect(page.Window.Locator("table.offers tbody tr").First).ToContainTextAsync("12.0 dBi");
        await PressAsync(page, "#add-to-receiver", "Enter");
        await Assertions.Expect(page.Window.Locator("#added")).ToContainTextAsync("chosen-horn");
        await BenchPage.SoonAsync(() =>
        {
            Assert.Equal("chosen-horn", BenchFile.Read(file).Plan!.Receiver.Antenna);
            return Task.CompletedTask;
        });
        await PressAsync(page, "#undo", "Enter");
        await BenchPage.SoonAsync(() =>
        {
            Assert.Equal("probe", BenchFile.Read(file).Plan!.Receiver.Antenna);
            return Task.CompletedTask;
        });
    }

    private static async Task OpenACopyAsync(BenchPage page, string file)
    {
        await GoAsync(page, "#view-benches", "main.benches");
        await PressAsync(page, "[aria-label='Copy evening-bench.toml']", "Enter");
        await Assertions.Expect(page.Window.Locator("#copy-name")).ToBeFocusedAsync();
        await page.Window.Keyboard.PressAsync("Control+a");
        await page.Window.Keyboard.TypeAsync("second evening");
        await page.Window.Keyboard.PressAsync("Enter");
        await page.Window.Locator("[aria-label='Open second evening.toml']").WaitForAsync();
        await Assertions.Expect(page.Window.Locator("#folder-title")).ToBeFocusedAsync();
        Assert.Equal(await File.ReadAllTextAsync(file), await File.ReadAllTextAsync(Path.Combine(Path.GetDirectoryName(file)!, "second evening.toml")));
        await GoAsync(page, "[aria-label='Open second evening.toml']", "main.tabletop");
        await Assertions.Expect(page.Window.Locator("main")).ToContainTextAsync("second evening.toml");
    }

    private static async Task GoAsync(BenchPage page, string link, string view)
    {
        await PressAsync(page, link, "Enter");
        await page.Window.WaitForSelectorAsync($"{view}[data-ready=yes]");
    }

    private static async Task TypeAsync(BenchPage page, string field, string text)
    {
        await PressAsync(page, field, "Control+a");
        await page.Window.Keyboard.TypeAsync(text);
        await page.Window.Keyboard.PressAsync("Enter");
    }

    private static async Task PressAsync(BenchPage page, string selector, string key)
    {
        await page.TabToAsync(selector);
        await page.Window.Keyboard.PressAsync(key);
    }
}
