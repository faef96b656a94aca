using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>What a panel makes of a wave at one angle and one polarisation.</summary>
internal sealed record PanelAngleReport(double AngleDeg, string ElectricField, double ReflectedDb, double PassedDb, double AbsorbedRatio, double PassedPhaseDeg)
{
    internal static PanelAngleReport Of(LayeredSheet sheet, double frequency, double angle, Polarisation polarisation)
    {
        SheetResponse response = sheet.At(frequency, angle, polarisation);
        return new PanelAngleReport(
            Math.Round(angle * 180.0 / Math.PI, 9),
            polarisation == Polarisation.Across ? "across" : "within",
            Decibels.FromRatio(response.Reflected),
            Decibels.FromRatio(response.Passed),
            response.Absorbed,
            response.Transmission.Phase * 180.0 / Math.PI);
    }
}
