using System.Globalization;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Drawing.Figures;

/// <summary>What a flat sheet lets through and throws back, against the angle, for both lies of the electric field.</summary>
public static class PanelFigure
{
    private const int LastDegree = 89;
    private const double LowestDb = -40.0;

    /// <summary>The figure.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    public static Figure Of(LayeredSheet sheet, double frequency)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        double[] degrees = [.. Enumerable.Range(0, LastDegree + 1).Select(i => (double)i)];
        Trace Line(string label, Polarisation polarisation, Func<SheetResponse, double> share) => new(
            label, degrees, [.. degrees.Select(d => Level(share(sheet.At(frequency, d * Math.PI / 180.0, polarisation))))]);
        Panel Of(string label, Func<SheetResponse, double> share) => new(
            label, [Line("field across the plane of incidence", Polarisation.Across, share), Line("field within it", Polarisation.Within, share)])
        {
            Lowest = LowestDb,
            Highest = 1.0,
        };
        string title = string.Create(CultureInfo.InvariantCulture, $"{Layers(sheet)} at {frequency / 1e9:0.0##} GHz");
        return LineFigure.Of(
            title, Description(sheet, frequency), new HorizontalAxis("angle to the normal [deg]"), [Of("passes [dB]", r => r.Passed), Of("thrown back [dB]", r => r.Reflected)]);
    }

    private static string Layers(LayeredSheet sheet) => string.Join(
        ", ", sheet.Layers.Select(layer => string.Create(CultureInfo.InvariantCulture, $"{layer.Material.Name} {1e3 * layer.Thickness:0.###} mm")));

    private static string Description(LayeredSheet sheet, double frequency)
    {
        SheetResponse upright = sheet.At(frequency, 0.0, Polarisation.Across);
        return string.Create(
            CultureInfo.InvariantCulture, $"At right angles {100.0 * upright.Passed:F0} % of the power passes and {100.0 * upright.Reflected:F0} % is thrown back.");
    }

    private static double Level(double share) => Math.Max(LowestDb, Decibels.FromRatio(share));
}
