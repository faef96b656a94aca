using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class FindingCountTests(ServedPage served)
{
    [Theory]
    [MemberData(nameof(LooksTests.Screens), MemberType = typeof(LooksTests))]
    public async Task What_is_wrong_is_counted_under_the_drawing_and_leads_to_the_list(Screen screen)
    {
        BenchPage page = await served.OpenAsync(screen);
        Assert.Equal(0, await page.Window.Locator("#to-findings").CountAsync());
        await page.Window.FillAsync("#receiver-roll", "60");
        await page.Window.PressAsync("#receiver-roll", "Enter");
        await Assertions.Expect(page.Window.Locator("#to-findings")).ToContainTextAsync("the show");
        await page.Window.ClickAsync("#to-findings");
        await Assertions.Expect(page.Window.Locator("#findings-title")).ToBeFocusedAsync();
        await Assertions.Expect(page.Window.Locator("[data-finding=polarisation-crossed] button.do")).ToBeInViewportAsync();
        await Look.AtAsync(page.Window, "findings", screen, whole: false);
    }
}
