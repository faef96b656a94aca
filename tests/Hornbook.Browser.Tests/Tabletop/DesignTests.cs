using Hornbook.Bench.Files;
using Hornbook.Tabletop.Views;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class DesignTests(ServedPage served)
{
    public static TheoryData<Screen> Screens => [Screen.Wide, Screen.Phone.Dark];

    [Fact]
    public async Task A_horn_is_designed_by_keyboard_alone_and_stands_in_the_file()
    {
        string file = served.NewFile();
        BenchPage page = await OpenAsync("antennas", Screen.Wide, await served.ServeAsync(file));
        await Assertions.Expect(page.Window.Locator("#antenna-facts img")).ToBeVisibleAsync();
        await page.TabToAsync("#wish-gain");
        await page.Window.Keyboard.PressAsync("Control+a");
        await page.Window.Keyboard.TypeAsync("15");
        await page.TabToAsync("#wish-horn");
        await page.Window.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Window.Locator("#offered-facts img")).ToBeVisibleAsync();
        // The first is the wished one, whatever its length in half millimetres.
        await Assertions.Expect(page.Window.Locator("table.offers tbody tr").First).ToContainTextAsync("15.0 dBi");
        await page.TabToAsync("#add-to-receiver");
        await page.Window.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Window.Locator("#added")).ToContainTextAsync("chosen-horn");
        await BenchPage.SoonAsync(() =>
        {
            BenchFile saved = BenchFile.Read(file);
            Assert.Equal("chosen-horn", saved.Plan!.Receiver.Antenna);
            Assert.Contains(saved.Plan.Antennas, antenna => antenna.Name == "chosen-horn");
            return Task.CompletedTask;
        });
        await page.Window.ClickAsync("#undo");
        await BenchPage.SoonAsync(() =>
        {
            Assert.Equal(ExampleBench.File.Text, File.ReadAllText(file));
            return Task.CompletedTask;
        });
    }

    [Fact]
    public async Task A_grid_from_a_wish_stands_in_the_file_laid_aside()
    {
        string file = served.NewFile();
        BenchPage page = await OpenAsync("panels", Screen.Wide, await served.ServeAsync(file));
        await page.Window.ClickAsync("#wish-grid");
        await Assertions.Expect(page.Window.Locator("#offered-facts img").First).ToBeVisibleAsync();
        await page.Window.ClickAsync("#add-grid");
        await Assertions.Expect(page.Window.Locator("#panel-facts img").First).ToBeVisibleAsync();
        await BenchPage.SoonAsync(() =>
        {
            BenchFile saved = BenchFile.Read(file);
            Assert.False(Assert.Single(saved.Plan!.Panels).Stands);
            return Task.CompletedTask;
        });
    }

    [Fact]
    public async Task Safety_is_one_click_away_from_every_view()
    {
        string address = await served.ServeAsync();
        BenchPage page = await served.OpenAsync(address: address);
        foreach (View view in View.All)
        {
            await page.Window.ClickAsync($"#{view.Id}");
            await page.Window.ClickAsync("#view-safety");
            await Assertions.Expect(page.Window.Locator("#eyes")).ToBeVisibleAsync();
        }

        await Assertions.Expect(page.Window.Locator("#keep-away")).ToContainTextAsync("Keep");
        await Assertions.Expect(page.Window.Locator("#limits tr.chosen")).ToHaveCountAsync(1);
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Axe_finds_nothing_and_the_views_fit(Screen screen)
    {
        string file = served.NewFile();
        BenchFile.Read(file).Edit(Hornbook.Bench.Files.Editing.BenchChange.ToNew("panels.grid", PanelText.Lines("strip grid"))).Save(file);
        string address = await served.ServeAsync(file);
        await LookAsync(await OpenAsync("antennas", screen, address), "antennas", screen, "wish-horn", "#offered-facts img");
        await LookAsync(await OpenAsync("panels", screen, address), "panels", screen, "wish-grid", "#offered-facts img");
        await LookAsync(await OpenAsync("safety", screen, address), "safety", screen, null, "#limits");
    }

    private async Task<BenchPage> OpenAsync(string view, Screen screen, string address)
    {
        IPage window = await served.WindowAsync(screen);
        await window.GotoAsync($"{address}/{view}");
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        return new BenchPage(window);
    }

    private static async Task LookAsync(BenchPage page, string view, Screen screen, string? wish, string done)
    {
        if (wish is not null)
        {
            await page.Window.ClickAsync($"#{wish}");
        }

        await page.Window.Locator(done).First.WaitForAsync();
        await page.Window.Locator(".working").First.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Detached });
        await Look.AtAsync(page.Window, view, screen, whole: true);
    }
}
