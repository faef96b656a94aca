using System.Globalization;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>The figure of docs/performance.md: what a transfer costs beside the direct sum, against the number of samples.</summary>
internal static class TransferCostFigure
{
    private const int LeastRuns = 2;

    // More would take minutes to sum directly.
    private const int MostOfSheets = 16000;

    private static readonly TimeSpan LeastTime = TimeSpan.FromMilliseconds(10);
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(400);
    private static readonly int[] Samples = [16, 32, 64, 125, 250, 500, 1000, 2000, 4000, 8000, 16000, 35000];

    /// <summary>Measures, prints and writes.</summary>
    internal static void Write(string path)
    {
        // Until the runtime has compiled everything for good.
        for (int i = 0; i < 3; i++)
        {
            Share("warming up", TransferBodies.PanelAndTable(2000));
        }

        double[] panel = [.. Samples.Select(n => Share("panel and table", TransferBodies.PanelAndTable(n)))];
        double[] sheets = [.. Samples.Select(n => n <= MostOfSheets ? Share("two sheets", TransferBodies.Sheets(n)) : double.NaN)];
        File.WriteAllText(path, Draw(panel, sheets).ToSvg());
    }

    private static Figure Draw(double[] panel, double[] sheets)
    {
        double[] places = [.. Enumerable.Range(1, Samples.Length).Select(i => (double)i)];
        string[] names = [.. Samples.Select(n => n.ToString(CultureInfo.InvariantCulture))];
        return LineFigure.Of(
            "Fields between bodies: time over that of the direct sum",
            "Against the number of samples, the time of a transfer over the time of summing every pair falls from one to a few hundredths.",
            new HorizontalAxis("samples") { Names = names },
            [
                new Panel("time over direct time [-]",
                    [new Trace("a panel of 900 above a table of so many", places, panel), new Trace("two sheets of so many each, 0.3 m apart", places, sheets)])
                {
                    Lowest = 0.0,
                    Highest = 1.5,
                    Levels = [new Mark(1.0, "direct sum")],
                },
            ]);
    }

    private static double Share(string name, TransferBodies bodies)
    {
        OneWay transfer = bodies.OnOneCore();
        double direct = Shortest(() => RadiatedField.Evaluate(bodies.Currents, TransferBodies.Wavenumber, bodies.Observers, bodies.Fields));
        double fast = Shortest(() => transfer.Add(bodies.Currents, bodies.Fields));
        double plan = Shortest(() => bodies.Plan());
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: {bodies.Points.Length} x {bodies.Observers.Length}, direct {1e3 * direct:G3} ms, transfer {1e3 * fast:G3} ms, trees and plan {1e3 * plan:G3} ms, ratio {fast / direct:G2}"));
        return fast / direct;
    }

    /// <summary>The shortest of some runs [s of processor time, which other jobs do not lengthen].</summary>
    private static double Shortest(Action work)
    {
        work();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        double shortest = double.PositiveInfinity;
        for (int run = 0; run < LeastRuns || Environment.CpuUsage.TotalTime - start < Patience; run++)
        {
            TimeSpan begin = Environment.CpuUsage.TotalTime;
            int times = 0;
            for (; Environment.CpuUsage.TotalTime - begin < LeastTime; times++)
            {
                work();
            }

            shortest = Math.Min(shortest, (Environment.CpuUsage.TotalTime - begin).TotalSeconds / times);
        }

        return shortest;
    }
}
