using Hornbook.Bench.Maps;
using Hornbook.Drawing.Maps;

namespace Hornbook.Tabletop;

/// <summary>The two pictures of the strength, on one scale of colours.</summary>
/// <param name="OverTable">Address of the picture in the plan.</param>
/// <param name="Upright">Address of the picture in the elevation.</param>
/// <param name="Brightest">The density of the strongest colour [W/m²].</param>
public sealed record StrengthSheetPair(string OverTable, string Upright, double Brightest)
{
    internal static StrengthSheetPair Of(BenchMoment moment, double step, IProgress<double> progress, CancellationToken cancellation)
    {
        StrengthMap overTable = StrengthMap.OverTable(moment.Scene, moment.Source, moment.Panels, step, new Half(progress, 0.0), cancellation);
        StrengthMap upright = StrengthMap.Upright(moment.Scene, moment.Source, moment.Panels, moment.Height, step, new Half(progress, 0.5), cancellation);
        double brightest = StrengthPicture.Brightest(overTable);
        return new StrengthSheetPair(Address(overTable, brightest), Address(upright, brightest), brightest);
    }

    private static string Address(StrengthMap map, double brightest) =>
        $"data:image/png;base64,{Convert.ToBase64String(StrengthPicture.Png(map, brightest))}";

    private sealed class Half(IProgress<double> whole, double from) : IProgress<double>
    {
        public void Report(double value) => whole.Report(from + (0.5 * value));
    }
}
