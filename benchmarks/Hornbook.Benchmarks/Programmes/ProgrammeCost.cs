using System.Diagnostics;
using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;
using Hornbook.Bench.Readings;

namespace Hornbook.Benchmarks.Programmes;

/// <summary>What a programme of fifteen demonstrations takes, and what each of its curves takes alone.</summary>
internal static class ProgrammeCost
{
    /// <summary>Prints the curves, then the programme, by the clock and in processor time. Nothing is remembered from one to the next but the tables of the sheets.</summary>
    internal static void Write(string path)
    {
        BenchPlan plan = FifteenDemonstrations.Read(path);
        foreach (Demonstration shown in plan.Demonstrations)
        {
            Timed(shown.Name, () => Curve.Of(Scene.Of(plan), shown));
        }

        Programme? programme = null;
        Timed("programme", () => programme = Programme.Propose(plan, plan.Demonstrations));
        Console.WriteLine($"{programme!.Items.Count} shown, {programme.Left.Count} left out");
    }

    private static void Timed(string name, Action work)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        Stopwatch clock = Stopwatch.StartNew();
        work();
        string line = string.Create(CultureInfo.InvariantCulture, $"{name,-20} {clock.Elapsed.TotalSeconds,8:0.00} s {(Environment.CpuUsage.TotalTime - before).TotalSeconds,8:0.00} s of processor time");
        Console.WriteLine(line);
    }
}
