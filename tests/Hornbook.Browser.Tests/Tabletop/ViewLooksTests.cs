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
        await window.GotoAsync($"{await served.ServeAsync()}/{address}");
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        await window.WaitForSelectorAsync(filled);
        await Look.AtAsync(window, address, screen, whole: screen.Touch);
    }
}
