using Hornbook.Testing;
using Microsoft.Playwright;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>Pictures to look at, in artifacts/screenshots; those of the manual are taken again with HORNBOOK_SCREENSHOTS=1.</summary>
internal static class Pictures
{
    /// <summary>What the manual shows of other views than the bench.</summary>
    private static readonly HashSet<string> Manual = ["benches-wide-light.png", "guest-phone-light.png"];

    internal static async Task TakeAsync(IPage window, string view, Screen screen)
    {
        string name = $"{view}-{screen.Name}-{(screen.Scheme == ColorScheme.Dark ? "dark" : "light")}.png";
        await window.EvaluateAsync("() => document.getElementById('folder')?.replaceChildren('benches')"); // no manual shows where a test has its files
        PageScreenshotOptions options = new() { Path = Repository.At("artifacts", "screenshots", name), FullPage = view == "benches" };
        await window.ScreenshotAsync(options);
        if (Environment.GetEnvironmentVariable("HORNBOOK_SCREENSHOTS") == "1" && Manual.Contains(name))
        {
            File.Copy(options.Path, Repository.At("docs", "images", $"{view}.png"), overwrite: true);
        }
    }
}
