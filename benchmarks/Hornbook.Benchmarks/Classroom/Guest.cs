using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.AspNetCore.SignalR.Protocol;
using Microsoft.Extensions.DependencyInjection;

namespace Hornbook.Benchmarks.Classroom;

/// <summary>A guest without a screen: lets the bench sound, and times each move until the tone is told the new frequency, of a copy of its own or of the presenter's hand.</summary>
internal sealed partial class Guest : IAsyncDisposable
{
    private readonly HubConnection _page;
    private readonly HttpClient _http;
    private readonly RenderedPage _rendered = new();
    private readonly List<double> _waits = [];
    private long _handsId, _eventsId, _modules, _calls, _moved;
    private TaskCompletionSource _sounded = new();

    private Guest(HttpClient http, CookieContainer cookies, Uri address)
    {
        _http = http;
        IHubConnectionBuilder builder = new HubConnectionBuilder().WithUrl(new Uri(address, "/_blazor"), options =>
        {
            options.Cookies = cookies;
            options.Transports = HttpTransportType.WebSockets;
        });
        builder.Services.AddSingleton<IHubProtocol>(new BlazorPack());
        _page = builder.Build();
        _page.On<int, byte[]>("JS.RenderBatch", Draw);
        _page.On<long, string, string?, int, long, int>("JS.BeginInvokeJS", Do);
        _page.On<string, bool, string?>("JS.EndInvokeDotNet", static (_, _, _) => { });
        _page.On<int, string>("JS.AttachComponent", static (_, _) => { });
        _page.On<string?>("JS.Error", error => throw new InvalidOperationException(error));
    }

    /// <summary>Milliseconds from each move to its tone.</summary>
    internal IReadOnlyList<double> Waits => _waits;

    /// <summary>Comes in by an invitation and gets everything ready.</summary>
    /// <param name="invitation">The address with its key.</param>
    /// <param name="takesCopy">Whether it moves a copy of its own, else it looks on.</param>
    internal static async Task<Guest> EnterAsync(Uri invitation, bool takesCopy)
    {
        CookieContainer cookies = new();
        HttpClient http = new(new HttpClientHandler { CookieContainer = cookies });
        await http.GetStringAsync(invitation);
        Uri address = new(invitation, "/");
        string html = await http.GetStringAsync(address);
        Guest guest = new(http, cookies, address);
        await guest.BeginAsync(address, html, takesCopy);
        return guest;
    }

    /// <summary>The presenter has moved something: the next tone is that of this move.</summary>
    internal void Expect(long since) => Volatile.Write(ref _moved, since);

    /// <summary>Drags for a while, a move each so often, and puts down after one to three dozen moves: hands do not put down in step.</summary>
    internal async Task DragAsync(TimeSpan lasting, TimeSpan pace, Random random)
    {
        Stopwatch clock = Stopwatch.StartNew();
        await Task.Delay(pace * random.NextDouble());
        int moves = 0;
        for (double way = -10.0; clock.Elapsed < lasting; way = -way) // to the source and as far back, so that it stays over the table
        {
            moves = way < 0.0 ? random.Next(12, 37) : moves;
            await CallAsync(_handsId, "Grasp", "receiver", "move", "plan", 0.0, 0.0);
            for (int i = 0; i < moves && clock.Elapsed < lasting; i++)
            {
                _sounded = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
                Volatile.Write(ref _moved, Stopwatch.GetTimestamp());
                await CallAsync(_handsId, "Follow", way * (1 + (i % 12)), 5.0 * (i % 3), true);
                await _sounded.Task.WaitAsync(TimeSpan.FromSeconds(30));
                await Task.Delay(pace);
            }

            await CallAsync(_handsId, "Release");
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _page.DisposeAsync();
        _http.Dispose();
    }

    private async Task BeginAsync(Uri address, string html, bool takesCopy)
    {
        await _page.StartAsync();
        string state = State().Match(html) is { Success: true } kept ? kept.Groups[1].Value : string.Empty;
        string? circuit = await _page.InvokeAsync<string?>("StartCircuit", address.AbsoluteUri, address.AbsoluteUri, "[]", state);
        _ = circuit ?? throw new InvalidOperationException("no circuit");
        string roots = string.Join(',', Root().Matches(html).Where(root => root.Groups[1].Value.Contains("\"descriptor\"", StringComparison.Ordinal))
            .Select((root, i) => $$"""{"type":"add","ssrComponentId":{{i + 1}},"marker":{{root.Groups[1].Value}}}"""));
        await _page.SendAsync("UpdateRootComponents", $$"""{"batchId":0,"operations":[{{roots}}]}""", state);
        await UntilAsync(() => _handsId != 0 && _eventsId != 0);
        if (takesCopy)
        {
            await ClickAsync("take-copy");
        }

        await ClickAsync("sound");
        await Task.Delay(500);
    }

    private async Task ClickAsync(string button)
    {
        await UntilAsync(() => _rendered.Click(button) is not null);
        Dictionary<string, object?> what = new() { ["eventHandlerId"] = _rendered.Click(button), ["eventName"] = "click", ["eventFieldInfo"] = null };
        await CallAsync(_eventsId, "DispatchEventAsync", what, new Dictionary<string, object> { ["type"] = "click", ["detail"] = 1 });
    }

    private Task CallAsync(long target, string method, params object[] arguments) => _page.SendAsync(
        "BeginInvokeDotNetFromJS", Interlocked.Increment(ref _calls).ToString(CultureInfo.InvariantCulture), null, method, target, JsonSerializer.Serialize(arguments));

    private async Task Draw(int batch, byte[] data)
    {
        lock (_rendered)
        {
            _rendered.Add(data);
        }

        await _page.SendAsync("OnRenderCompleted", batch, null);
    }

    // What the page asks of the browser; only what it waits for is answered with more than nothing.
    private async Task Do(long handle, string what, string? arguments, int result, long target, int call)
    {
        switch (what)
        {
            case "attach":
                _handsId = Reference(arguments!, 1);
                break;
            case "Blazor._internal.attachWebRendererInterop":
                _eventsId = Reference(arguments!, 1);
                break;
            case "follow" when Interlocked.Exchange(ref _moved, 0) is long since and not 0:
                _waits.Add(Stopwatch.GetElapsedTime(since).TotalMilliseconds);
                _sounded.TrySetResult();
                break;
        }

        string answer = result == 1 ? $$"""{"__jsObjectId":{{Interlocked.Increment(ref _modules)}}}""" : "null";
        if (handle != 0)
        {
            await _page.SendAsync("EndInvokeJSFromDotNet", handle, true, $"[{handle},true,{answer}]");
        }
    }

    private static long Reference(string arguments, int place) =>
        JsonDocument.Parse(arguments).RootElement[place].GetProperty("__dotNetObject").GetInt64();

    private static async Task UntilAsync(Func<bool> holds)
    {
        Stopwatch patience = Stopwatch.StartNew();
        while (!holds())
        {
            if (patience.Elapsed > TimeSpan.FromSeconds(60))
            {
                throw new TimeoutException("the page does not come");
            }

            await Task.Delay(10);
        }
    }

    [GeneratedRegex("<!--Blazor:(\\{.*?\\})-->")]
    private static partial Regex Root();

    [GeneratedRegex("<!--Blazor-Server-Component-State:(.*?)-->")]
    private static partial Regex State();
}
