using System.Numerics;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a grid makes of a wave: the angle, the plane in which it is tilted, and how its electric field lies to the strips or wires.</summary>
/// <param name="AngleDeg">Between the wave and the normal.</param>
/// <param name="TiltedTowards">Across or along the strips.</param>
/// <param name="ElectricField">Across or along the strips.</param>
/// <param name="PassedDb">What passes, from either side.</param>
/// <param name="ReflectedDb">What the strips throw back when they are met first.</param>
/// <param name="ReflectedFromBoardDb">What comes back when the board is met first; null without a board.</param>
/// <param name="IsScattered">A second beam leaves.</param>
internal sealed record GridAngleReport(
    double AngleDeg, string TiltedTowards, string ElectricField, double PassedDb, double ReflectedDb, double? ReflectedFromBoardDb, bool IsScattered)
{
    /// <summary>Both lies of the field at one angle, tilted across or along the strips.</summary>
    internal static IEnumerable<GridAngleReport> Of(ISheet grid, ISheetResponse response, double frequency, double angle, bool alongStrips)
    {
        double sine = Math.Sin(angle);
        (double across, double along) = alongStrips ? (0.0, sine) : (sine, 0.0);
        SheetMatrices strips = response.Arriving(SheetFace.Front, across, along);
        TangentialMatrix? board = grid is BoardedStripGrid ? response.Arriving(SheetFace.Back, across, along).Reflection : null;
        bool isScattered = grid.Scatters(frequency, across, along);
        GridAngleReport Row(string field, Func<TangentialMatrix, Complex> own) => new(
            Math.Round(angle * 180.0 / Math.PI, 9), alongStrips ? "along" : "across", field,
            LevelDb(own(strips.Transmission)), LevelDb(own(strips.Reflection)), board is { } matrix ? LevelDb(own(matrix)) : null, isScattered);
        return [Row("along", matrix => matrix.AlongAlong), Row("across", matrix => matrix.AcrossAcross)];
    }

    private static double LevelDb(Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
