using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>The views beside the bench: each on a wide screen and a phone, by day and by night.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class ViewLooksTests(ServedPage served)
{
    /// <summary>Addresses, and what is there when a view has all to show.</summary>
    private static readonly (string Address, string Filled)[] Views = [("programme", "#rehearsal"), ("perform", "#hear:not(:has-text('computed'))")];

    /// <summary>Each view on each screen.</summary>
    public static TheoryData<string, string, Screen> Each =>
        new(Views.SelectMany(view => new[] { Screen.Wide, Screen.Wide.Dark, Screen.Phone, Screen.Phone.Dark }.Select(screen => (view.Address, view.Filled, screen))));

    [Theory]
    [MemberData(nameof(Each))]
    public async Task Axe_finds_nothing_and_the_view_fits(string address, string filled, Screen screen)
    {
        IPage window = await served.WindowAsync(screen);
        await window.GotoAsync($"{served.Address}/{address}");
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        await window.WaitForSelectorAsync(filled);
        string theme = screen.Scheme == ColorScheme.Dark ? "dark" : "light";
        string picture = Repository.At("artifacts", "screenshots", $"{address}-{screen.Name}-{theme}.png");
        await window.ScreenshotAsync(new PageScreenshotOptions { Path = picture, FullPage = screen.Touch });
        if (Environment.GetEnvironmentVariable("HORNBOOK_SCREENSHOTS") == "1" && theme == "light" && screen.Name == Screen.Wide.Name)
        {
            File.Copy(picture, Repository.At("docs", "images", $"{address}.png"), overwrite: true);
        }

        AxeResult found = await window.RunAxe();
        Assert.Empty(found.Violations.Select(v => $"{v.Id}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}"));
        Assert.NotEmpty(found.Passes);
        Assert.True(
            await window.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
            "the page is wider than the window");
    }
}
