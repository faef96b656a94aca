using System.Globalization;
using System.Text;

namespace Hornbook.Tabletop.Sheets;

/// <summary>Numbers, points and paths as SVG writes them.</summary>
public static class SvgText
{
    /// <summary>A length or angle to a tenth.</summary>
    public static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>The value of a points attribute.</summary>
    public static string Points(IEnumerable<SheetPoint> points) => string.Join(' ', points);

    /// <summary>Ticks of a ruler along a line as one path.</summary>
    /// <param name="division">How it is divided.</param>
    /// <param name="lengthMm">How far it goes from zero, both ways if the start is negative.</param>
    /// <param name="startMm">First tick.</param>
    /// <param name="at">Sheet point of a mark, and the direction of its tick times its length.</param>
    public static string RulerTicks(RulerDivision division, double startMm, double lengthMm, Func<double, double, (SheetPoint Foot, SheetPoint Head)> at)
    {
        ArgumentNullException.ThrowIfNull(division);
        ArgumentNullException.ThrowIfNull(at);
        StringBuilder path = new();
        foreach (int number in RulerDivision.Labels(startMm, startMm + lengthMm, division.TickMm, 1))
        {
            double tick = number % division.Major == 0 ? 16.0 : number % division.Middle == 0 ? 11.0 : 6.0;
            (SheetPoint foot, SheetPoint head) = at(number * division.TickMm, tick);
            path.Append(CultureInfo.InvariantCulture, $"M{foot}L{head}");
        }

        return path.ToString();
    }
}
