using System.Net;
using System.Net.WebSockets;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Builder;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sharing;

/// <summary>The page on two addresses of this machine: 127.0.0.1 for the presenter, and 127.0.0.2 in the place of a network's.</summary>
public sealed class GuestDoorTests : IAsyncLifetime
{
    private static readonly IPAddress Network = IPAddress.Parse("127.0.0.2");

    private readonly Share _share = new([Network]);
    private readonly WebApplication _app;
    private readonly HttpClient _client = new(new HttpClientHandler { UseCookies = false });

    public GuestDoorTests() => _app = TabletopHost.Build(ExampleBench.File, ExampleBench.Home, port: 0, _share);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private Uri Invitation => new(_share.Invitations(_app.Urls).Single());

    private Uri Door => new(Invitation.GetLeftPart(UriPartial.Authority));

    private Uri Presenters => new(_app.Urls.Single(url => new Uri(url).Host == IPAddress.Loopback.ToString()));

    public async ValueTask InitializeAsync() => await _app.StartAsync();

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
    }

    [Theory]
    [InlineData("")]
    [InlineData("?key=")]
    [InlineData("?key=wrong")]
    [InlineData("benches")]
    [InlineData("tabletop/page.css")]
    [InlineData("_framework/blazor.web.js")]
    [InlineData("_blazor/negotiate")]
    public async Task Without_the_key_nothing_is_given(string path)
    {
        using HttpResponseMessage response = await _client.GetAsync(new Uri(Door, path), Stop);
        Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
        Assert.DoesNotContain("<script", await response.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_key_becomes_a_cookie_that_scripts_do_not_see_and_leaves_the_address()
    {
        using HttpResponseMessage response = await _client.GetAsync(Invitation, Stop);
        string cookie = response.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        string page = await response.Content.ReadAsStringAsync(Stop);
        Assert.Contains("url=/\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain(_share.Key.Text, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_the_key_a_guest_looks_on()
    {
        string page = await (await AsGuest(string.Empty)).Content.ReadAsStringAsync(Stop);
        Assert.Contains("You look on", page, StringComparison.Ordinal);
        Assert.Contains(ExampleBench.Scene.Plan.Title, page, StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"kept\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("view-benches", page, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await AsGuest("tabletop/page.css")).StatusCode);
    }

    [Theory]
    [InlineData("benches")]
    [InlineData("nothing-here")]
    [InlineData("../examples/evening-bench.toml")]
    [InlineData("examples/evening-bench.toml")]
    public async Task What_is_not_for_guests_is_refused(string path) => Assert.Equal(HttpStatusCode.Forbidden, (await AsGuest(path)).StatusCode);

    [Theory]
    [InlineData("bench.example")]
    [InlineData("127.0.0.1")]
    [InlineData("localhost")]
    [InlineData("127.0.0.2")]
    [InlineData("127.0.0.2:1")]
    public async Task Under_another_name_it_is_not_served(string host) => Assert.Equal(HttpStatusCode.BadRequest, (await AsGuest(string.Empty, ("Host", host))).StatusCode);

    [Fact]
    public async Task Another_site_is_refused() => Assert.Equal(HttpStatusCode.Forbidden, (await AsGuest("_blazor/negotiate", ("Origin", "http://bench.example"))).StatusCode);

    [Fact]
    public async Task The_presenters_door_is_as_it_was_and_takes_no_network_name()
    {
        string page = await _client.GetStringAsync(Presenters, Stop);
        Assert.DoesNotContain("You look on", page, StringComparison.Ordinal);
        using HttpRequestMessage request = new(HttpMethod.Get, Presenters);
        request.Headers.Host = Door.Authority;
        using HttpResponseMessage response = await _client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task When_all_seats_are_taken_it_says_so_and_a_seat_is_given_back()
    {
        using (ClientWebSocket guest = await Seated())
        {
            Assert.Equal(1, _share.Seats.Taken); // derived: one guest
            while (_share.Seats.TryTake())
            {
            }

            HttpResponseMessage full = await AsGuest(string.Empty);
            Assert.Equal(HttpStatusCode.ServiceUnavailable, full.StatusCode);
            Assert.Contains("places are taken", await full.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
            await Assert.ThrowsAsync<WebSocketException>(Seated);
            guest.Abort();
        }

        for (int patience = 0; _share.Seats.AreFull && patience < 500; patience++)
        {
            await Task.Delay(10, Stop);
        }

        Assert.Equal(Share.MostGuests - 1, _share.Seats.Taken); // derived: the one guest has left
    }

    [Fact]
    public async Task Only_connections_that_hold_a_seat_carry_a_bench() => Assert.Equal(HttpStatusCode.BadRequest, (await AsGuest("_blazor?id=1")).StatusCode);

    [Fact]
    public async Task A_body_or_a_line_too_long_is_refused()
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(Door, "_blazor/negotiate")) { Content = new ByteArrayContent(new byte[40000]) };
        request.Headers.Add("Cookie", $"hornbook-key={_share.Key.Text}");
        using HttpResponseMessage response = await _client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.Equal(HttpStatusCode.RequestUriTooLong, (await AsGuest("?" + new string('a', 5000))).StatusCode);
    }

    private async Task<HttpResponseMessage> AsGuest(string path, params (string Name, string Value)[] headers)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(Door, path));
        request.Headers.Add("Cookie", $"hornbook-key={_share.Key.Text}");
        foreach ((string name, string value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return await _client.SendAsync(request, Stop);
    }

    private async Task<ClientWebSocket> Seated()
    {
        ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Cookie", $"hornbook-key={_share.Key.Text}");
        await socket.ConnectAsync(new UriBuilder(Door) { Scheme = "ws", Path = "_blazor" }.Uri, Stop);
        return socket;
    }
}
