using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class LooksTests(ServedPage served)
{
    public static TheoryData<Screen> Screens =>
    [
        Screen.Wide, Screen.Wide.Dark, Screen.Projector, Screen.Projector.Dark, Screen.Phone, Screen.Phone.Dark,
    ];

    /// <summary>Pictures that the manual shows, and what they are called there.</summary>
    private static readonly Dictionary<(string Name, ColorScheme Scheme), string> Manual = new()
    {
        [(Screen.Wide.Name, ColorScheme.Light)] = "tabletop-light.png",
        [(Screen.Wide.Name, ColorScheme.Dark)] = "tabletop-dark.png",
        [(Screen.Phone.Name, ColorScheme.Light)] = "tabletop-phone.png",
    };

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Axe_finds_nothing_and_the_page_fits(Screen screen)
    {
        BenchPage page = await served.OpenAsync(screen);
        await page.Window.WaitForSelectorAsync(".keep-out");
        await page.Window.WaitForSelectorAsync("#findings :is(li, p:not(.quiet))");
        await PictureAsync(page, screen);
        AxeResult found = await page.Window.RunAxe();
        Assert.Empty(found.Violations.Select(v => $"{v.Id}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}"));
        Assert.NotEmpty(found.Passes);
        Assert.True(
            await page.Window.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
            "the page is wider than the window");
    }

    [Fact]
    public async Task On_a_wide_screen_drawing_and_reading_are_in_view_without_scrolling()
    {
        BenchPage page = await served.OpenAsync(Screen.Wide);
        foreach (string part in new[] { ".sheet", ".reading", "#sound", ".poses", ".caution" })
        {
            LocatorBoundingBoxResult box = (await page.Window.Locator(part).First.BoundingBoxAsync())!;
            Assert.True(box.Y >= 0 && box.Y + box.Height <= Screen.Wide.Height, $"{part} ends at {box.Y + box.Height} px");
        }
    }

    /// <summary>Pictures to look at; those of the manual are taken again with HORNBOOK_SCREENSHOTS=1.</summary>
    private static async Task PictureAsync(BenchPage page, Screen screen)
    {
        string theme = screen.Scheme == ColorScheme.Dark ? "dark" : "light";
        PageScreenshotOptions options = new() { Path = Repository.At("artifacts", "screenshots", $"tabletop-{screen.Name}-{theme}.png"), FullPage = screen.Touch };
        await page.Window.ScreenshotAsync(options);
        if (Environment.GetEnvironmentVariable("HORNBOOK_SCREENSHOTS") == "1" && Manual.TryGetValue((screen.Name, screen.Scheme), out string? name))
        {
            Directory.CreateDirectory(Repository.At("docs", "images"));
            File.Copy(options.Path, Repository.At("docs", "images", name), overwrite: true);
        }
    }
}
