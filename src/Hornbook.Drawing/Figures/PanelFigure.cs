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
        string title = string.Create(CultureInfo.InvariantCulture, $"{Layers(sheet)} at {frequency / 1e9:0.0##} GHz");
        return Of(
            title, Description(sheet, frequency), ("field across the plane of incidence", "field within it"), [],
            degrees => (sheet.At(frequency, degrees * Math.PI / 180.0, Polarisation.Across), sheet.At(frequency, degrees * Math.PI / 180.0, Polarisation.Within)));
    }

    /// <summary>The figure of any sheet; a grid is tilted across its strips or wires.</summary>
    /// <param name="title">What it shows, in one line.</param>
    /// <param name="sheet">The sheet, in its own frame.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    public static Figure Of(string title, ISheet sheet, double frequency)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        double oneWave = sheet.OneWaveUpTo(frequency) * 180.0 / Math.PI;
        return Of(
            title, Description(SheetAngle.Of(sheet, frequency, 0.0)), IsGrid(sheet) ? ("field along the metal", "field across it") : ("field across the plane of incidence", "field within it"),
            oneWave < LastDegree ? [new Mark(oneWave, "a second beam beyond")] : [],
            degrees =>
            {
                SheetAngle angle = SheetAngle.Of(sheet, frequency, degrees * Math.PI / 180.0);
                return (angle.Beside, angle.Within);
            });
    }

    private static Figure Of(
        string title, string description, (string Beside, string Within) labels, IReadOnlyList<Mark> places, Func<double, (SheetResponse Beside, SheetResponse Within)> at)
    {
        double[] degrees = [.. Enumerable.Range(0, LastDegree + 1).Select(i => (double)i)];
        (SheetResponse Beside, SheetResponse Within)[] found = [.. degrees.Select(at)];
        Panel Of(string label, Func<SheetResponse, double> share) => new(
            label, [new(labels.Beside, degrees, [.. found.Select(f => Level(share(f.Beside)))]), new(labels.Within, degrees, [.. found.Select(f => Level(share(f.Within)))])])
        {
            Lowest = LowestDb,
            Highest = 1.0,
            Places = places,
        };
        return LineFigure.Of(title, description, new HorizontalAxis("angle to the normal [deg]"), [Of("passes [dB]", r => r.Passed), Of("thrown back [dB]", r => r.Reflected)]);
    }

    private static bool IsGrid(ISheet sheet) => sheet is StripGrid or BoardedStripGrid or WireGrid;

    private static string Description(SheetAngle upright) => string.Create(
        CultureInfo.InvariantCulture,
        $"At right angles {100.0 * upright.Beside.Passed:0.##} % of the power passes with the field the one way and {100.0 * upright.Within.Passed:0.##} % with the field the other way.");

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
