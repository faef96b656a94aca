using System.Globalization;
using System.Numerics;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Drawing.Figures;

/// <summary>What a grid lets through at right angles as its strips or wires are turned against the electric field.</summary>
public static class GridTurnFigure
{
    private const int LastDegree = 90;
    private const double LowestDb = -40.0;

    /// <summary>The figure.</summary>
    /// <param name="title">What it shows, in one line.</param>
    /// <param name="grid">The grid, in its own frame.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    public static Figure Of(string title, ISheet grid, double frequency)
    {
        ArgumentNullException.ThrowIfNull(grid);
        TangentialMatrix passed = grid.At(frequency).Arriving(SheetFace.Front, 0.0, 0.0).Transmission;
        double[] degrees = [.. Enumerable.Range(0, LastDegree + 1).Select(i => (double)i)];
        Trace Line(string label, Func<double, Complex> amplitude) => new(label, degrees, [.. degrees.Select(d => Level(amplitude(d * Math.PI / 180.0)))]);
        Panel panel = new(
            "passes [dB]",
            [Line("to a receiver as the source", angle => Aligned(passed, angle)), Line("to a receiver crossed with it", angle => Crossed(passed, angle))])
        {
            Lowest = LowestDb,
            Highest = 1.0,
        };
        string description = string.Create(
            CultureInfo.InvariantCulture,
            $"With the metal along the field {Level(Aligned(passed, 0.0)):F1} decibels pass, with the metal across it {Level(Aligned(passed, 0.5 * Math.PI)):F2} decibels; at 45 degrees a crossed receiver hears {Level(Crossed(passed, 0.25 * Math.PI)):F1} decibels.");
        return LineFigure.Of(title, description, new HorizontalAxis("field against the metal [deg]"), [panel]);
    }

    private static Complex Aligned(TangentialMatrix passed, double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return (passed.AlongAlong * (cosine * cosine)) + (passed.AcrossAcross * (sine * sine));
    }

    private static Complex Crossed(TangentialMatrix passed, double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return (passed.AcrossAcross - passed.AlongAlong) * (sine * cosine);
    }

    private static double Level(Complex amplitude) => Math.Max(LowestDb, 2.0 * Decibels.FromRatio(amplitude.Magnitude));
}
