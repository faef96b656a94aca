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

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Axe_finds_nothing_and_the_page_fits(Screen screen)
    {
        BenchPage page = await served.OpenAsync(screen);
        await page.Window.WaitForSelectorAsync(".keep-out");
        await page.RestAsync();
        await Look.AtAsync(page.Window, "tabletop", screen, whole: screen.Touch);
    }

    [Fact]
    public async Task On_a_wide_screen_drawing_and_reading_are_in_view_without_scrolling()
    {
        BenchPage page = await served.OpenAsync(Screen.Wide);
        await page.Window.WaitForSelectorAsync(".keep-out");
        await page.RestAsync();
        foreach (string part in new[] { ".sheet", ".reading", "#sound", ".poses", ".caution" })
        {
            LocatorBoundingBoxResult box = (await page.Window.Locator(part).First.BoundingBoxAsync())!;
            Assert.True(box.Y >= 0 && box.Y + box.Height <= Screen.Wide.Height, $"{part} ends at {box.Y + box.Height} px");
        }
    }
}
