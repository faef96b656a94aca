using System.Globalization;
using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Drawing.Figures;

/// <summary>What length buys: gain and half-power widths of the best horn for each length, and the horn that was chosen.</summary>
public static class TradeFigure
{
    /// <summary>The figure.</summary>
    /// <param name="wish">What was wished, in words.</param>
    /// <param name="trade">The best horns, ascending lengths; ≥ 2.</param>
    /// <param name="chosen">The horn that was chosen.</param>
    public static Figure Of(string wish, IReadOnlyList<HornFigures> trade, HornFigures chosen)
    {
        ArgumentNullException.ThrowIfNull(trade);
        ArgumentNullException.ThrowIfNull(chosen);
        double[] lengths = [.. trade.Select(f => Millimetres(f.Horn.Length))];
        Mark here = new(Millimetres(chosen.Horn.Length), "chosen length");
        Trace Line(string label, Func<HornFigures, double> y) => new(label, lengths, [.. trade.Select(y)]);
        Panel gain = new("gain [dBi]", [Line("best for its length", f => Decibels.FromRatio(f.Gain))])
        {
            Places = [here],
            Levels = [new Mark(Decibels.FromRatio(chosen.Gain), "chosen gain")],
        };
        Panel widths = new("half-power width [deg]", [Line("E plane", f => Degrees(f.HalfPowerWidthE)), Line("H plane", f => Degrees(f.HalfPowerWidthH))])
        {
            Places = [here],
        };
        return LineFigure.Of($"Wished: {wish}", Description(chosen), new HorizontalAxis("length from throat to mouth [mm]"), [gain, widths]);
    }

    private static string Description(HornFigures chosen) => string.Create(
        CultureInfo.InvariantCulture,
        $"The chosen horn is {Millimetres(chosen.Horn.Length):F1} mm long with a mouth of {Millimetres(chosen.Horn.MouthWidth):F1} by {Millimetres(chosen.Horn.MouthHeight):F1} mm and a gain of {Decibels.FromRatio(chosen.Gain):F1} dBi. Twice the length gives about 3 dB more.");

    private static double Millimetres(double length) => 1e3 * length;

    private static double Degrees(double? angle) => (angle ?? double.NaN) * 180.0 / Math.PI;
}
