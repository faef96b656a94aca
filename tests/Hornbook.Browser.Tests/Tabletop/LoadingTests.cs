using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using Hornbook.Bench.Files;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Keeping;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class LoadingTests(ServedPage served)
{
    [Fact]
    public async Task The_page_loads_without_a_complaint_in_the_console_and_asks_nothing_of_other_machines()
    {
        IPage window = await served.WindowAsync(Screen.Wide);
        ConcurrentQueue<string> complaints = [];
        ConcurrentQueue<Uri> asked = [];
        window.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                complaints.Enqueue(message.Text);
            }
        };
        window.PageError += (_, error) => complaints.Enqueue(error);
        window.Request += (_, request) => asked.Enqueue(new Uri(request.Url));
        window.WebSocket += (_, socket) => asked.Enqueue(new Uri(socket.Url));
        IResponse? response = await window.GotoAsync(served.Address);
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        await window.RunAndWaitForRequestFinishedAsync(
            () => window.ClickAsync("#sound"), new() { Predicate = request => request.Url.EndsWith("tone.js", StringComparison.Ordinal) });
        await window.ClickAsync("#sound");

        Assert.Equal(PageHeaders.ContentPolicy, await response!.HeaderValueAsync("content-security-policy"));
        Assert.Empty(complaints);
        Assert.Contains(asked, uri => uri.Scheme == "ws");
        Assert.Contains(asked, uri => uri.AbsolutePath.EndsWith("tone.js", StringComparison.Ordinal));
        Assert.All(asked, uri => Assert.Equal(IPAddress.Loopback.ToString(), uri.Host));
    }

    [Fact]
    public async Task A_script_or_style_that_was_smuggled_into_the_page_does_not_run()
    {
        BenchPage page = await served.OpenAsync();
        bool ran = await page.Window.EvaluateAsync<bool>(
            """
            async () => {
              const script = document.createElement('script');
              script.textContent = 'window.smuggled = true';
              document.body.append(script);
              await new Promise(done => setTimeout(done, 50));
              return window.smuggled === true;
            }
            """);
        Assert.False(ran);
    }

    [Fact]
    public async Task When_the_program_ends_it_ends_soon_and_the_page_says_so()
    {
        IPage window = await served.WindowAsync(Screen.Wide);
        string path = served.NewFile();
        await using WebApplication app = TabletopHost.Build(BenchFile.Read(path), new BenchHome(path, path), port: 0);
        await app.StartAsync(TestContext.Current.CancellationToken);
        await window.GotoAsync(app.Urls.Single());
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        Assert.False(await window.IsVisibleAsync("#components-reconnect-modal"));
        long before = Stopwatch.GetTimestamp();
        await app.StopAsync(TestContext.Current.CancellationToken);
        // Generous: the host waits 2 s for an open page at most; without that limit it would be 30 s.
        Assert.InRange(Stopwatch.GetElapsedTime(before).TotalSeconds, 0.0, 20.0);
        await Assertions.Expect(window.Locator("#components-reconnect-modal")).ToContainTextAsync("program");
        await Assertions.Expect(window.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
    }
}
