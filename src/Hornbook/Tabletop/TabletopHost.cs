using System.Globalization;
using Hornbook.Bench.Files;
using Hornbook.Commands.Typing;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.HostFiltering;

namespace Hornbook.Tabletop;

/// <summary>Serves the tabletop page to this machine only.</summary>
internal static class TabletopHost
{
    /// <summary>Where the page is served if nothing else is asked for.</summary>
    internal const int DefaultPort = 5210;

    private const int ReadyThreads = 16;

    /// <summary>Serves the page of a bench file until it is stopped.</summary>
    /// <param name="benchPath">The bench file; null for the example.</param>
    /// <param name="port">Wanted; a free one is taken where that is in use, or for 0.</param>
    /// <param name="openBrowser">Whether to open a browser, if there is one.</param>
    /// <param name="cancellation">Ctrl-C: the normal end.</param>
    /// <returns>0.</returns>
    /// <exception cref="Commands.BadInputException">The bench file cannot be used.</exception>
    internal static async Task<int> RunAsync(string? benchPath, int port, bool openBrowser, CancellationToken cancellation)
    {
        BenchHome home = BenchHome.For(benchPath, Environment.CurrentDirectory);
        await using WebApplication app = await StartAsync(Usable(benchPath ?? home.OpenedFrom), home, port);
        string address = app.Urls.Single();
        Console.WriteLine($"The tabletop of {Words.File(home.OpenedFrom)} is at {address}");
        Console.WriteLine("Only this machine can see it. Ctrl-C ends it.");
        if (openBrowser)
        {
            BrowserWindow.TryOpen(address);
        }

        await app.WaitForShutdownAsync(cancellation);
        return 0;
    }

    /// <summary>A page for a bench, not started yet.</summary>
    /// <param name="file">The bench; usable.</param>
    /// <param name="home">Where it is kept.</param>
    /// <param name="port">On 127.0.0.1; 0 takes a free one.</param>
    internal static WebApplication Build(BenchFile file, BenchHome home, int port)
    {
        // Findings and maps keep every core busy for a while; a hand that moves must not wait until one of their threads is free.
        ThreadPool.GetMinThreads(out int workers, out int ports);
        ThreadPool.SetMinThreads(Math.Max(workers, ReadyThreads), ports);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            // The program may be started from any folder; its static files stand beside it.
            ContentRootPath = AppContext.BaseDirectory,
            ApplicationName = typeof(TabletopHost).Assembly.GetName().Name,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.UseUrls(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}"));
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Error)
            .AddFilter("Microsoft.Extensions.Hosting", LogLevel.None); // a port in use is dealt with below
        AddServices(builder.Services, file, home);
        WebApplication app = builder.Build();
        app.UseMiddleware<LoopbackOnly>();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    private static BenchFile Usable(string path)
    {
        BenchFile file = BenchFile.Read(path);
        return BenchDesk.Refusal(file) is null ? file : throw BenchArgument.Wrong(file);
    }

    private static void AddServices(IServiceCollection services, BenchFile file, BenchHome home)
    {
        services.AddRazorComponents().AddInteractiveServerComponents();
        services.AddSingleton(new BenchDesk(file));
        services.AddSingleton<BenchAdvice>();
        services.AddSingleton(home);
        services.AddSingleton<BenchKeeper>();
        services.AddHostedService<KeepingService>();
        services.AddScoped<BenchSession>();
        services.AddSingleton(TimeProvider.System);
        services.AddDataProtection();
        services.Configure<KeyManagementOptions>(options => options.XmlRepository = new KeysOfThisRun());
        services.Configure<HostFilteringOptions>(options => options.AllowedHosts = [.. LoopbackOnly.Hosts]);
        // Open pages must not hold up Ctrl-C.
        services.Configure<HostOptions>(options => options.ShutdownTimeout = TimeSpan.FromSeconds(2));
    }

    private static async Task<WebApplication> StartAsync(BenchFile file, BenchHome home, int port)
    {
        WebApplication wanted = Build(file, home, port);
        try
        {
            await wanted.StartAsync();
            return wanted;
        }
        catch (IOException taken) when (taken.InnerException is AddressInUseException)
        {
            await wanted.DisposeAsync();
            Console.WriteLine($"Port {port} is in use; another one is taken.");
            WebApplication other = Build(file, home, 0);
            await other.StartAsync();
            return other;
        }
    }
}
