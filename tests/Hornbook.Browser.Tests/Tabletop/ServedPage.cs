using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Keeping;
using Hornbook.Testing;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>The example bench served to a real browser, which is started once for all tests.</summary>
public sealed class ServedPage : IAsyncLifetime
{
    private const float Patience = 60000.0f; // ms: a busy machine is slow, not wrong

    private readonly List<WebApplication> _apps = [];
    private readonly List<IBrowserContext> _windows = [];
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("hornbook-pages");
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private WebApplication? _common;
    private string? _test;

    public Scene Scene { get; } = ExampleBench.Scene;

    public string Address { get; private set; } = string.Empty;

    public async ValueTask InitializeAsync()
    {
        if (Chromium.MaySkip)
        {
            return;
        }

        Assertions.SetDefaultExpectTimeout(Patience);
        _common = await StartAsync(NewFile());
        Address = _common.Urls.Single();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Chromium.Path,
            Timeout = Patience,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        foreach (WebApplication app in _apps.Append(_common).OfType<WebApplication>())
        {
            await StopAsync(app);
        }

        _folder.Delete(recursive: true);
    }

    /// <summary>A copy of the example in a folder of its own.</summary>
    public string NewFile()
    {
        string path = Path.Combine(_folder.CreateSubdirectory(Guid.NewGuid().ToString("N")).FullName, "evening-bench.toml");
        File.WriteAllText(path, ExampleBench.File.Text);
        return path;
    }

    /// <summary>A program of its own with a bench on its desk; returns the page's address.</summary>
    /// <param name="path">The bench; null for a new copy of the example.</param>
    /// <param name="keptIn">The file that is written, where it is another one.</param>
    public async Task<string> ServeAsync(string? path = null, string? keptIn = null)
    {
        await PutAwayAsync();
        string file = path ?? NewFile();
        _apps.Add(await StartAsync(file, keptIn));
        return _apps[^1].Urls.Single();
    }

    /// <summary>What the scene reads with the receiver in a pose.</summary>
    public Reading ReadAt(Pose receiver) => Scene.Read(Scene.Plan.Source, Scene.Plan.Receiver with { Pose = receiver });

    /// <summary>An empty window of its own; the test is skipped where there is no browser.</summary>
    public async Task<IPage> WindowAsync(Screen screen)
    {
        Assert.SkipWhen(Chromium.MaySkip, Chromium.Missing);
        await PutAwayAsync();
        IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = screen.Width, Height = screen.Height },
            ColorScheme = screen.Scheme,
            HasTouch = screen.Touch,
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(Patience);
        _windows.Add(context);
        return await context.NewPageAsync();
    }

    /// <summary>A window with the page in it, ready for hands; what one test moves, no other sees.</summary>
    public async Task<BenchPage> OpenAsync(Screen? screen = null, string? address = null)
    {
        IPage window = await WindowAsync(screen ?? Screen.Wide);
        return await ReadyAsync(window, address ?? await ServeAsync());
    }

    /// <summary>The page in this window, ready for hands.</summary>
    public static async Task<BenchPage> ReadyAsync(IPage window, string address)
    {
        await window.GotoAsync(address);
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        return new BenchPage(window);
    }

    private static async Task<WebApplication> StartAsync(string file, string? keptIn = null)
    {
        WebApplication app = TabletopHost.Build(BenchFile.Read(file), new BenchHome(file, keptIn ?? file), port: 0);
        await app.StartAsync();
        return app;
    }

    private static async Task StopAsync(WebApplication app)
    {
        await app.StopAsync();
        await app.DisposeAsync();
    }

    // Windows and programs that the test before left open would go on drawing, sounding and computing beside this one.
    private async Task PutAwayAsync()
    {
        string? test = TestContext.Current.Test?.UniqueID;
        if (test == _test)
        {
            return;
        }

        _test = test;
        foreach (IBrowserContext window in _windows)
        {
            await window.CloseAsync();
        }

        foreach (WebApplication app in _apps)
        {
            await StopAsync(app);
        }

        _windows.Clear();
        _apps.Clear();
    }
}

/// <summary>All browser tests share one server and one browser, and run one after the other.</summary>
[CollectionDefinition(nameof(ServedPage))]
public sealed class ServedPageDefinition : ICollectionFixture<ServedPage>;
