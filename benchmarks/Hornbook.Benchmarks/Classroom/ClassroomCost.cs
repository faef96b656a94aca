using System.Diagnostics;
using System.Globalization;
using System.Net;
using Hornbook.Bench.Files;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Builder;

namespace Hornbook.Benchmarks.Classroom;

/// <summary>What a class costs: how long each guest waits for the tone of a move, and what the program's memory does meanwhile.</summary>
internal static class ClassroomCost
{
    /// <summary>Serves a bench to a class of so many for so long, and prints processor time and memory before, during and after.</summary>
    internal static async Task WriteAsync(string path, int guests, TimeSpan lasting)
    {
        Share share = new([IPAddress.Parse("127.0.0.2")]);
        await using WebApplication app = Serve(path, share);
        await app.StartAsync();
        Memory("before");
        using Process children = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [.. Own(), GuestClass.Command, share.Invitations(app.Urls).Single(),
            guests.ToString(CultureInfo.InvariantCulture), lasting.TotalSeconds.ToString(CultureInfo.InvariantCulture)]))!;
        TimeSpan used = Environment.CpuUsage.TotalTime;
        Stopwatch clock = Stopwatch.StartNew();
        TimeSpan step = lasting / 5.0;
        while (!children.HasExited)
        {
            using CancellationTokenSource pause = new(step);
            try
            {
                await children.WaitForExitAsync(pause.Token);
            }
            catch (OperationCanceledException)
            {
                Print(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0} s, {share.Seats.Taken} guests"), GCKind.Any);
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"processor time of the program: {100.0 * ((Environment.CpuUsage.TotalTime - used) / clock.Elapsed):0} % of one core"));
        Memory("gone");
        await app.StopAsync();
    }

    /// <summary>A copy of a bench, served from a folder of its own.</summary>
    internal static WebApplication Serve(string path, Share share)
    {
        string bench = Path.Combine(Directory.CreateTempSubdirectory("hornbook-class").FullName, Path.GetFileName(path));
        File.Copy(path, bench);
        return TabletopHost.Build(BenchFile.Read(bench), new BenchHome(bench, bench), port: 0, share);
    }

    // Started with "dotnet hornbook.dll" or as a program of its own.
    private static IEnumerable<string> Own() =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [typeof(ClassroomCost).Assembly.Location] : [];

    private static void Memory(string when)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        Print(when, GCKind.FullBlocking);
    }

    // While a class is at work nothing is collected for the sake of a number: it would stop every guest, and be what is measured.
    private static void Print(string when, GCKind collection) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"{when,-20} heap {GC.GetGCMemoryInfo(collection).HeapSizeBytes / 1e6,7:0.0} MB, working set {Environment.WorkingSet / 1e6,7:0} MB"));
}
