using Hornbook.Bench.Beginnings;
using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class BenchesTests(ServedPage served)
{
    private const string Ready = "main.benches[data-ready=yes]";

    public static TheoryData<Screen> Screens => [Screen.Wide, Screen.Wide.Dark, Screen.Phone, Screen.Phone.Dark];

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Axe_finds_nothing_and_the_page_fits(Screen screen)
    {
        string file = served.NewFile();
        await File.WriteAllTextAsync(Path.Combine(Path.GetDirectoryName(file)!, "broken.toml"), "format = 1\ntitle = 7\n", TestContext.Current.CancellationToken);
        IPage window = await OpenAsync(screen, file);
        await window.FillAsync("#q-power", "5 W");
        await window.ClickAsync("#q-make");
        await window.WaitForSelectorAsync("#q-power-wrong");
        await window.ClickAsync("[data-file='evening-bench.toml'] button.plain");
        await window.WaitForSelectorAsync("#copy-name");
        await Look.AtAsync(window, "benches", screen, whole: true);
    }

    [Fact]
    public async Task Five_questions_are_answered_by_keyboard_alone_and_the_bench_lies_on_the_desk()
    {
        string file = served.NewFile();
        IPage window = await OpenAsync(Screen.Wide, file);
        await window.FocusAsync("#q-frequency");
        await TypeAsync(window, "9.41 GHz");
        await TypeAsync(window, "3 mW");
        await window.Keyboard.PressAsync("ArrowDown"); // the next set: a horn and an open guide
        await window.Keyboard.PressAsync("Tab");
        await TypeAsync(window, "1.5 m");
        await TypeAsync(window, "60 cm");
        await window.Keyboard.PressAsync("ArrowDown"); // the next audience: a hall
        await window.Keyboard.PressAsync("Tab");
        await TypeAsync(window, "by keyboard");
        await window.Keyboard.PressAsync("Enter");
        await window.WaitForSelectorAsync("main.tabletop[data-ready=yes]");
        await Assertions.Expect(window.Locator("h1")).ToHaveTextAsync("by keyboard");

        BenchFile made = BenchFile.Read(Path.Combine(Path.GetDirectoryName(file)!, "by keyboard.toml"));
        BenchFile expected = FirstBench.Of("by keyboard", new BenchWish(9.41e9, 3e-3, AntennaSet.HornAndOpenGuide, 1.5, 0.6, Audience.Hall)).File!;
        Assert.Equal(expected.Text, made.Text);
        Assert.DoesNotContain(BenchFindings.Of(made.Plan!, null, TestContext.Current.CancellationToken), finding => finding.Severity == Severity.Spoils);
    }

    [Fact]
    public async Task Opening_another_bench_changes_it_in_every_window()
    {
        string file = served.NewFile();
        string other = Path.Combine(Path.GetDirectoryName(file)!, "other.toml");
        await File.WriteAllTextAsync(other, ExampleBench.File.Text.Replace("Evening bench", "Other bench", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        string address = await served.ServeAsync(file);
        BenchPage wall = await served.OpenAsync(address: address);
        BenchPage table = await served.OpenAsync(address: address);
        await table.Window.FillAsync("#receiver-along", "110");
        await table.Window.PressAsync("#receiver-along", "Enter");
        await table.Window.ClickAsync("#view-benches");
        await table.Window.ClickAsync("[data-file='other.toml'] button:not(.plain)");
        await Assertions.Expect(wall.Window.Locator("h1")).ToHaveTextAsync("Other bench");
        await Assertions.Expect(table.Window.Locator("h1")).ToHaveTextAsync("Other bench");
        await wall.FieldBecomesAsync("receiver-along", 120.0, 1e-9); // derived: as in the example
        Assert.Contains("x = \"1.1 m\"", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private static async Task TypeAsync(IPage window, string text)
    {
        await window.Keyboard.PressAsync("Control+A");
        await window.Keyboard.TypeAsync(text);
        await window.Keyboard.PressAsync("Tab");
    }

    private async Task<IPage> OpenAsync(Screen screen, string file)
    {
        IPage window = await served.WindowAsync(screen);
        await window.GotoAsync($"{await served.ServeAsync(file)}/benches");
        await window.WaitForSelectorAsync(Ready);
        return window;
    }
}
