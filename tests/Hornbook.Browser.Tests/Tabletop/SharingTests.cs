using System.Net;
using Hornbook.Bench.Files;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>A presenter at 127.0.0.1, and guests at 127.0.0.2 in the place of a network's address.</summary>
[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class SharingTests(ServedPage served) : IAsyncLifetime
{
    private readonly Share _share = new([IPAddress.Parse("127.0.0.2")]);
    private string _file = string.Empty;
    private WebApplication? _app;

    private Uri Invitation => new(_share.Invitations(_app!.Urls).Single());

    private string Presenters => _app!.Urls.Single(url => new Uri(url).Host == IPAddress.Loopback.ToString());

    public async ValueTask InitializeAsync()
    {
        _file = served.NewFile();
        _app = TabletopHost.Build(BenchFile.Read(_file), new BenchHome(_file, _file), port: 0, _share);
        await _app.StartAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _app!.StopAsync();
        await _app.DisposeAsync();
    }

    [Fact]
    public async Task A_guest_looks_on_moves_a_copy_and_comes_back_and_the_presenters_bench_stays_the_presenters()
    {
        BenchPage presenter = await served.OpenAsync(address: Presenters);
        BenchPage guest = await served.OpenAsync(Screen.Phone, Invitation.AbsoluteUri);
        Assert.DoesNotContain("key", guest.Window.Url, StringComparison.Ordinal);
        await SetAsync(presenter, "110");
        await guest.FieldBecomesAsync("receiver-along", 110.0, 1e-9); // derived: as the presenter set it

        await guest.Window.FillAsync("#receiver-along", "90");
        await guest.Window.PressAsync("#receiver-along", "Enter");
        await Assertions.Expect(guest.Window.Locator("#refusal")).ToContainTextAsync("presenter's bench");

        await guest.Window.ClickAsync("#take-copy");
        await guest.Window.WaitForSelectorAsync("#guest[data-looks-on=no]");
        await SetAsync(guest, "80");
        await guest.FieldBecomesAsync("receiver-along", 80.0, 1e-9); // derived: as the guest set it
        await presenter.FieldBecomesAsync("receiver-along", 110.0, 1e-9); // derived: as the presenter set it

        await guest.Window.ClickAsync("#look-on");
        await guest.FieldBecomesAsync("receiver-along", 110.0, 1e-9); // derived: as the presenter set it
        await BenchPage.SoonAsync(async () => Assert.Contains("x = \"1.1 m\"", await File.ReadAllTextAsync(_file), StringComparison.Ordinal));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(_file)!));
    }

    [Fact]
    public async Task A_guest_sees_a_thing_while_the_presenter_drags_it()
    {
        BenchPage presenter = await served.OpenAsync(address: Presenters);
        BenchPage guest = await served.OpenAsync(Screen.Phone, Invitation.AbsoluteUri);
        string before = await guest.Window.InputValueAsync("#receiver-along");
        (float x, float y) = await presenter.MiddleAsync("#receiver-plan");
        await presenter.Window.Mouse.MoveAsync(x, y);
        await presenter.Window.Mouse.DownAsync();
        await presenter.Window.Mouse.MoveAsync(x - 80, y, new() { Steps = 8 });
        await Assertions.Expect(guest.Window.Locator("#receiver-along")).Not.ToHaveValueAsync(before);
        await BenchPage.SoonAsync(async () => Assert.Equal(await presenter.FieldAsync("receiver-along"), await guest.FieldAsync("receiver-along")));
        Assert.Contains("x = \"1.2 m\"", await File.ReadAllTextAsync(_file, TestContext.Current.CancellationToken), StringComparison.Ordinal); // derived: as in the example; nothing is put down
        await presenter.Window.Mouse.UpAsync();
    }

    [Fact]
    public async Task Without_the_key_nobody_comes_in_and_with_it_nobody_comes_to_the_files()
    {
        IPage window = await served.WindowAsync(Screen.Phone);
        IResponse? refused = await window.GotoAsync(Invitation.GetLeftPart(UriPartial.Authority));
        Assert.Equal(403, refused!.Status); // RFC 9110 (2022), 15.5.4: forbidden
        await window.GotoAsync(Invitation.AbsoluteUri);
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        Assert.Equal(0, await window.Locator("#view-benches").CountAsync());

        // Within the page, past the door: the router itself refuses.
        await window.EvaluateAsync("() => Blazor.navigateTo('/benches')");
        await Assertions.Expect(window.Locator("h1")).ToHaveTextAsync("This is for the person at the bench");
        Assert.Equal(0, await window.Locator("#mine").CountAsync());
        Assert.Equal(403, (await window.GotoAsync($"{Invitation.GetLeftPart(UriPartial.Authority)}/benches"))!.Status); // as above
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_guests_page_and_it_fits()
    {
        foreach (Screen screen in new[] { Screen.Wide, Screen.Phone.Dark, Screen.Phone })
        {
            BenchPage guest = await served.OpenAsync(screen, Invitation.AbsoluteUri);
            await guest.Window.WaitForSelectorAsync(".keep-out");
            await Look.AtAsync(guest.Window, "guest", screen, whole: false);
        }
    }

    private static async Task SetAsync(BenchPage page, string along)
    {
        await page.Window.FillAsync("#receiver-along", along);
        await page.Window.PressAsync("#receiver-along", "Enter");
    }
}
