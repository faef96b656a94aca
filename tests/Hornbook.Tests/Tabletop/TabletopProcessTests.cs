using System.Diagnostics;
using System.Globalization;
using Xunit;

namespace Hornbook.Tests.Tabletop;

/// <summary>The page as a person starts and ends it.</summary>
[Trait("Cost", "Slow")]
public sealed class TabletopProcessTests(ITestOutputHelper output) : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("hornbook-home");

    public void Dispose() => _home.Delete(recursive: true);

    [Fact]
    public async Task It_says_where_it_is_serves_the_page_soon_ends_well_when_asked_to_and_leaves_nothing_in_the_home_folder()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "it is asked with kill");
        CancellationToken stop = TestContext.Current.CancellationToken;
        long started = Stopwatch.GetTimestamp();
        using Process program = Start();
        string where = await program.StandardOutput.ReadLineAsync(stop) ?? string.Empty;
        Assert.StartsWith("The tabletop of evening-bench.toml is at http://127.0.0.1:", where, StringComparison.Ordinal);
        using HttpClient client = new();
        Assert.NotEmpty(await client.GetStringAsync(new Uri(where.Split(' ')[^1]), stop));
        double seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first page after {seconds:F2} s"));
        Assert.InRange(seconds, 0.0, 20.0); // generous, for a loaded machine; 2 s are asked of a free one

        // Not the interrupt of Ctrl-C, which a test run in the background would have to ignore; the program takes both alike.
        using Process asked = Process.Start("kill", ["-TERM", program.Id.ToString(CultureInfo.InvariantCulture)]);
        await program.WaitForExitAsync(stop).WaitAsync(TimeSpan.FromSeconds(20), stop);
        Assert.Equal(0, program.ExitCode);
        Assert.Empty(await program.StandardError.ReadToEndAsync(stop));
        Assert.Empty(_home.EnumerateFileSystemInfos("*", SearchOption.AllDirectories));
    }

    private Process Start()
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "hornbook.dll"), "tabletop", "--no-browser", "--port", "0"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["HOME"] = _home.FullName;
        start.Environment["DOTNET_CLI_HOME"] = _home.FullName;
        return Process.Start(start) ?? throw new InvalidOperationException("the program did not start");
    }
}
