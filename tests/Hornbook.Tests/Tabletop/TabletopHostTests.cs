using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using Hornbook.Commands;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Hornbook.Tests.Commands;
using Microsoft.AspNetCore.Builder;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class TabletopHostTests : IAsyncLifetime
{
    private readonly WebApplication _app = TabletopHost.Build(ExampleBench.File, ExampleBench.Home, port: 0);
    private readonly HttpClient _client = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private Uri Page => new(_app.Urls.Single());

    public async ValueTask InitializeAsync() => await _app.StartAsync();

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
    }

    [Fact]
    public async Task The_first_page_shows_the_reading_before_any_script_runs()
    {
        string html = await _client.GetStringAsync(Page, Stop);
        Assert.Contains($"<h1>{ExampleBench.Scene.Plan.Title}</h1>", html, StringComparison.Ordinal);
        Assert.Contains($">{Shown.Tone(ExampleBench.Scene.Read().Heard.Tone).Number}<", html, StringComparison.Ordinal);
        Assert.DoesNotContain("style=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("http://", html.Replace("http://www.w3.org", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https://", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_and_the_command_line_say_the_same()
    {
        Typed predicted = await Typed.In("predict", Repository.At("examples", ExampleBench.Name), "--json");
        JsonElement reading = JsonDocument.Parse(predicted.Output).RootElement;
        string html = WebUtility.HtmlDecode(await _client.GetStringAsync(Page, Stop));
        Assert.Contains($"id=\"tone\">{Shown.Tone(reading.GetProperty("tone_hz").GetDouble()).Number}<", html, StringComparison.Ordinal);
        Assert.Contains($"id=\"link\">{Shown.Level(reading.GetProperty("link_db").GetDouble())}<", html, StringComparison.Ordinal);
        Assert.Contains($"id=\"amplifier\">{Shown.Voltage(reading.GetProperty("amplifier_v").GetDouble())}<", html, StringComparison.Ordinal);
        Assert.Contains($"id=\"received\">{Shown.PowerLevel(reading.GetProperty("received_dbm").GetDouble())}<", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_listens_on_this_machine_only_and_says_what_a_page_may_load()
    {
        Assert.Equal(IPAddress.Loopback.ToString(), Page.Host);
        using HttpResponseMessage response = await _client.GetAsync(Page, Stop);
        Assert.Equal([PageHeaders.ContentPolicy], response.Headers.GetValues("Content-Security-Policy"));
        Assert.Equal(["nosniff"], response.Headers.GetValues("X-Content-Type-Options"));
    }

    [Theory]
    [InlineData("Host", "bench.example", HttpStatusCode.BadRequest)]
    [InlineData("Origin", "http://bench.example", HttpStatusCode.Forbidden)]
    [InlineData("Origin", "null", HttpStatusCode.Forbidden)]
    public async Task Another_site_is_refused(string header, string value, HttpStatusCode refusal)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, Page);
        request.Headers.TryAddWithoutValidation(header, value);
        using HttpResponseMessage response = await _client.SendAsync(request, Stop);
        Assert.Equal(refusal, response.StatusCode);
    }

    [Theory]
    [InlineData("tabletop/tone.js", "text/javascript")]
    [InlineData("tabletop/hands.js", "text/javascript")]
    [InlineData("tabletop/page.css", "text/css")]
    [InlineData("_framework/blazor.web.js", "text/javascript")]
    public async Task What_the_page_needs_comes_from_here(string path, string type)
    {
        using HttpResponseMessage response = await _client.GetAsync(new Uri(Page, path), Stop);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(type, response.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_port_in_use_gives_way_to_a_free_one_and_cancelling_ends_it_well()
    {
        using TcpListener taken = new(IPAddress.Loopback, 0);
        taken.Start();
        using CancellationTokenSource enough = new(TimeSpan.FromSeconds(1));
        int code = await TabletopHost.RunAsync(null, ((IPEndPoint)taken.LocalEndpoint).Port, openBrowser: false, shared: false, enough.Token);
        Assert.Equal(0, code);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_said_before_anything_is_served() =>
        await Assert.ThrowsAsync<BadInputException>(() => TabletopHost.RunAsync("no-such-bench.toml", 0, openBrowser: false, shared: false, CancellationToken.None));
}
