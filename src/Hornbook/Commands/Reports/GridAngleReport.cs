using System.Numerics;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a strip grid makes of a wave: the angle, the plane in which it is tilted, and how its electric field lies to the strips.</summary>
internal sealed record GridAngleReport(double AngleDeg, string TiltedTowards, string ElectricField, double PassedDb, double ReflectedDb, bool IsScattered)
{
    /// <summary>Both lies of the field at one angle, tilted across or along the strips.</summary>
    internal static IEnumerable<GridAngleReport> Of(StripGrid grid, double frequency, double angle, bool alongStrips)
    {
        double azimuth = alongStrips ? 0.5 * Math.PI : 0.0;
        TangentialMatrix reflected = grid.Reflection(frequency, angle, azimuth);
        bool isScattered = grid.Scatters(frequency, angle, azimuth);
        GridAngleReport Row(string field, Complex r) => new(
            Math.Round(angle * 180.0 / Math.PI, 9), alongStrips ? "along" : "across", field, LevelDb(1.0 + r), LevelDb(r), isScattered);
        return [Row("along", reflected.AlongAlong), Row("across", reflected.AcrossAcross)];
    }

    private static double LevelDb(Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
