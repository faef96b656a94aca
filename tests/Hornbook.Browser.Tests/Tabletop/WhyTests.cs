using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class WhyTests(ServedPage served)
{
    [Fact]
    public async Task Every_underlined_number_opens_its_explanation_and_the_keyboard_goes_back_to_it()
    {
        BenchPage page = await served.OpenAsync();
        string[] numbers = await page.Window.EvaluateAsync<string[]>("() => [...document.querySelectorAll('button.why')].map(e => e.id)");
        Assert.NotEmpty(numbers);
        HashSet<string> titles = [];
        foreach (string number in numbers)
        {
            await page.Window.FocusAsync($"#{number}");
            await page.Window.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Window.Locator("#why")).ToBeFocusedAsync();
            titles.Add(await page.TextAsync("why-title"));
            await page.Window.Keyboard.PressAsync("Escape");
            await Assertions.Expect(page.Window.Locator("#why")).ToHaveCountAsync(0);
            await Assertions.Expect(page.Window.Locator($"#{number}")).ToBeFocusedAsync();
        }

        Assert.Equal(numbers.Length, titles.Count);
    }

    [Theory]
    [MemberData(nameof(LooksTests.Screens), MemberType = typeof(LooksTests))]
    public async Task It_is_legible_on_every_screen(Screen screen)
    {
        BenchPage page = await served.OpenAsync(screen);
        await page.Window.ClickAsync("#link");
        await page.Window.ClickAsync("#measure");
        await page.Window.SelectOptionAsync("#receiver-antenna", "small-horn");
        await Assertions.Expect(page.Window.Locator("#why")).ToContainTextAsync("Friis");
        await Look.AtAsync(page.Window, "why", screen, whole: false);
        LocatorBoundingBoxResult box = (await page.Window.Locator("#why").BoundingBoxAsync())!;
        Assert.True(box.X >= 0 && box.X + box.Width <= screen.Width && box.Y >= 0 && box.Y + box.Height <= screen.Height, $"{box.X} {box.Y} {box.Width} {box.Height}");
    }
}
