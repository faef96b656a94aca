using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>A view looked at: its picture in artifacts/screenshots, nothing for axe to find, and no wider than the window.</summary>
internal static class Look
{
    /// <summary>Pictures that the manual shows, and what they are called there: taken again with HORNBOOK_SCREENSHOTS=1.</summary>
    private static readonly Dictionary<string, string> Manual = new()
    {
        ["tabletop-wide-light"] = "tabletop-light",
        ["tabletop-wide-dark"] = "tabletop-dark",
        ["tabletop-phone-light"] = "tabletop-phone",
        ["programme-wide-light"] = "programme",
        ["perform-wide-light"] = "perform",
        ["antennas-wide-light"] = "antennas",
        ["panels-wide-light"] = "panels",
        ["safety-wide-light"] = "safety",
        ["benches-wide-light"] = "benches",
        ["guest-phone-light"] = "guest",
    };

    /// <summary>Takes the picture and checks.</summary>
    /// <param name="window">With the view in it, and all there that it has to show.</param>
    /// <param name="view">Its name.</param>
    /// <param name="screen">On what it is looked at.</param>
    /// <param name="whole">Whether the picture is of the whole page and not of what the window shows.</param>
    internal static async Task AtAsync(IPage window, string view, Screen screen, bool whole)
    {
        await TakeAsync(window, $"{view}-{screen.Name}-{(screen.Scheme == ColorScheme.Dark ? "dark" : "light")}", whole);
        AxeResult found = await window.RunAxe();
        Assert.Empty(found.Violations.Select(v => $"{view}, {v.Id}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}"));
        Assert.NotEmpty(found.Passes);
        Assert.True(
            await window.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
            $"{view} is wider than the window");
    }

    private static async Task TakeAsync(IPage window, string name, bool whole)
    {
        await window.EvaluateAsync("() => document.getElementById('folder')?.replaceChildren('benches')"); // no manual shows where a test has its files
        PageScreenshotOptions options = new() { Path = Repository.At("artifacts", "screenshots", $"{name}.png"), FullPage = whole };
        await window.ScreenshotAsync(options);
        if (Environment.GetEnvironmentVariable("HORNBOOK_SCREENSHOTS") == "1" && Manual.TryGetValue(name, out string? shown))
        {
            File.Copy(options.Path, Repository.At("docs", "images", $"{shown}.png"), overwrite: true);
        }
    }
}
