using System.Globalization;
using Hornbook.Bench.Demonstrations;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>A setting of a demonstration as it is shown large: "turn 35 deg", "large-horn".</summary>
internal static class SettingText
{
    internal static string Of(Curve curve, CurvePoint point) => point.Setting.Label.Length > 0
        ? point.Setting.Label
        : string.Create(CultureInfo.InvariantCulture, $"{Rounded(curve, point).Replace('-', '\u2212')}{Unit(curve)}");

    private static string Unit(Curve curve) => curve.Abscissa.Unit switch
    {
        "deg" => "°",
        "" => string.Empty,
        string unit => $" {unit}",
    };

    // To a step that a hand can set: whole degrees, millimetres.
    private static string Rounded(Curve curve, CurvePoint point) =>
        curve.Abscissa.Shown(point.Setting.At).ToString(curve.Abscissa.Unit is "cm" or "mm" ? "0.0" : "0", CultureInfo.InvariantCulture);
}
