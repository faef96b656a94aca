using System.Diagnostics;
using System.Text.RegularExpressions;
using Hornbook.Bench.Files;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>Somebody who has never seen the page does what docs/first-tone.md says, line by line.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed partial class NewcomerTests(ServedPage served)
{
    [Fact]
    public async Task Three_clicks_lead_to_the_first_demonstration_and_it_is_heard()
    {
        string[] steps = Steps("The first demonstration");
        // Asked: three clicks or fewer.
        Assert.InRange(steps.Length, 1, 3);
        (IPage window, _) = await BeginAsync();
        await FollowAsync(window, steps[..^1]);
        string first = await window.InnerTextAsync("#rehearsed-tone");
        await FollowAsync(window, steps[^1..]);
        await Assertions.Expect(window.Locator("#rehearsed-tone")).Not.ToHaveTextAsync(first);
        Recording heard = await Recording.TakeAsync(window, seconds: 1.0);
        Assert.InRange(heard.Peak, 0.01, 1.0);
        Assert.InRange(heard.Pitch, 60.0, 3000.0); // the lowest and the highest tone of the example bench
    }

    [Fact]
    public async Task A_bench_of_ones_own_lies_on_the_desk_within_two_minutes()
    {
        (IPage window, string folder) = await BeginAsync();
        Stopwatch clock = Stopwatch.StartNew();
        string[] steps = Steps("Your own bench");
        await FollowAsync(window, steps);
        await Assertions.Expect(window.Locator("main#tabletop h1")).ToContainTextAsync("y bench");

        // Asked: under two minutes. A person needs some seconds for each line; the page must leave them.
        const double SecondsForALine = 8.0;
        Assert.InRange(clock.Elapsed.TotalSeconds + (SecondsForALine * steps.Length), 0.0, 120.0);
        BenchFile own = BenchFile.Read(Assert.Single(Directory.GetFiles(folder, "my*bench*.toml")));
        Assert.True(own.IsUsable);
        Close.Relative(1.6, own.Plan!.Table.Length, 1e-9); // as typed
    }

    private async Task<(IPage Window, string Folder)> BeginAsync()
    {
        string path = served.NewFile();
        IPage window = await served.WindowAsync(Screen.Wide);
        await window.GotoAsync(await served.ServeAsync(path));
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        return (window, Path.GetDirectoryName(path)!);
    }

    /// <summary>The numbered lines under a heading of the page.</summary>
    private static string[] Steps(string heading) =>
    [
        .. File.ReadAllLines(Repository.At("docs", "first-tone.md"))
            .SkipWhile(line => line != $"## {heading}").Skip(1).TakeWhile(line => !line.StartsWith('#')).Where(line => Numbered().IsMatch(line))
    ];

    private static async Task FollowAsync(IPage window, string[] steps)
    {
        foreach (string step in steps)
        {
            Match said = Said().Match(step);
            Assert.True(said.Success, $"\"{step}\" says neither what to click nor what to type");
            string name = said.Groups["name"].Value;
            if (said.Groups["text"].Success)
            {
                ILocator field = window.GetByLabel(name, new PageGetByLabelOptions { Exact = false }).First;
                await field.FillAsync(said.Groups["text"].Value);
                await field.BlurAsync();
            }
            else
            {
                await window.Locator("button, a, label").Filter(new LocatorFilterOptions { HasTextRegex = new Regex($"^\\s*{Regex.Escape(name)}\\s*$") }).First.ClickAsync();
                await SeeAsync(window, name);
            }
        }
    }

    // Whoever goes to another view looks at it before the next click.
    private static async Task SeeAsync(IPage window, string name)
    {
        if (await window.Locator("nav.views a").Filter(new LocatorFilterOptions { HasText = name }).CountAsync() > 0)
        {
            await Assertions.Expect(window.Locator("nav.views a.active")).ToHaveTextAsync(name);
            await Assertions.Expect(window.Locator("main[data-ready=yes] h1")).ToHaveTextAsync(name);
        }
    }

    [GeneratedRegex(@"^\d+\. ")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^\d+\. (?:Click|Type `(?<text>[^`]+)` as) \*(?<name>[^*]+)\*\.$")]
    private static partial Regex Said();
}
