using Hornbook.Bench.Files;
using Hornbook.Commands;
using Hornbook.Commands.Typing;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.HostFiltering;

namespace Hornbook.Tabletop;

/// <summary>Serves the tabletop page: to this machine only, unless it is shared.</summary>
internal static class TabletopHost
{
    /// <summary>Where the page is served if nothing else is asked for.</summary>
    internal const int DefaultPort = 5210;

    private const int ReadyThreads = 16;

    /// <summary>Serves the page of a bench file until it is stopped.</summary>
    /// <param name="benchPath">The bench file; null for the example.</param>
    /// <param name="port">Wanted; a free one is taken where that is in use, or for 0.</param>
    /// <param name="openBrowser">Whether to open a browser, if there is one.</param>
    /// <param name="shared">Whether guests on the network may look on.</param>
    /// <param name="cancellation">Ctrl-C: the normal end.</param>
    /// <returns>0.</returns>
    /// <exception cref="BadInputException">The bench file cannot be used, or there is no network to share it on.</exception>
    internal static async Task<int> RunAsync(string? benchPath, int port, bool openBrowser, bool shared, CancellationToken cancellation)
    {
        BenchHome home = BenchHome.For(benchPath, Environment.CurrentDirectory);
        BenchFile file = Usable(benchPath ?? home.OpenedFrom);
        Share? share = shared ? ShareOnNetwork() : null;
        await using WebApplication app = await StartAsync(file, home, port, share);
        string address = app.Urls.First();
        Console.WriteLine($"The tabletop of {Words.File(home.OpenedFrom)} is at {address}");
        Console.WriteLine(share is null ? "Only this machine can see it. Ctrl-C ends it." : Invitation.Of(share, app.Urls));
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
    /// <param name="share">Where guests come in; null where only this machine may see it.</param>
    internal static WebApplication Build(BenchFile file, BenchHome home, int port, Share? share = null)
    {
        // Findings and maps keep every core busy for a while; a hand that moves must not wait until one of their threads is free.
        ThreadPool.GetMinThreads(out int workers, out int ports);
        ThreadPool.SetMinThreads(Math.Max(workers, ReadyThreads), ports);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            // Nothing is configured by files, and a system gives out only so many watches.
            Args = ["--hostBuilder:reloadConfigOnChange=false"],
            // The program may be started from any folder; its static files stand beside it.
            ContentRootPath = AppContext.BaseDirectory,
            ApplicationName = typeof(TabletopHost).Assembly.GetName().Name,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(server => TabletopLimits.Listen(server, port, share));
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Error)
            .AddFilter("Microsoft.Extensions.Hosting", LogLevel.None); // a port in use is dealt with below
        AddServices(builder.Services, new Workplace(file, home), share);
        WebApplication app = builder.Build();
        app.UseMiddleware<PageHeaders>();
        app.UseMiddleware<LoopbackOnly>();
        if (share is not null)
        {
            app.UseMiddleware<GuestDoor>();
        }

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

    private static Share ShareOnNetwork() => NetworkAddresses.Own() is { Count: > 0 } own
        ? new Share(own)
        : throw new BadInputException("--share: this machine is on no network; connect it to that of the class, or leave --share out");

    private static void AddServices(IServiceCollection services, Workplace workplace, Share? share)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(TabletopLimits.OfCircuits).AddHubOptions(TabletopLimits.OfMessages);
        services.AddSingleton(_ => workplace);
        services.AddHostedService<KeepingService>();
        services.AddVisitors(share);
        services.AddSingleton(TimeProvider.System);
        services.AddDataProtection();
        services.Configure<KeyManagementOptions>(options => options.XmlRepository = new KeysOfThisRun());
        services.Configure<HostFilteringOptions>(options => options.AllowedHosts = [.. LoopbackOnly.Hosts, .. share?.Addresses.Select(address => address.ToString()) ?? []]);
        // Open pages must not hold up Ctrl-C.
        services.Configure<HostOptions>(options => options.ShutdownTimeout = TimeSpan.FromSeconds(2));
    }

    private static async Task<WebApplication> StartAsync(BenchFile file, BenchHome home, int port, Share? share)
    {
        WebApplication wanted = Build(file, home, port, share);
        try
        {
            await wanted.StartAsync();
            return wanted;
        }
        catch (IOException taken) when (taken.InnerException is AddressInUseException)
        {
            await wanted.DisposeAsync();
            Console.WriteLine($"Port {port} is in use; another one is taken.");
            WebApplication other = Build(file, home, 0, share);
            await other.StartAsync();
            return other;
        }
    }
}
