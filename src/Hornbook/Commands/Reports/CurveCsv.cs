using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>A predicted curve for spreadsheets: every point, every digit.</summary>
internal static class CurveCsv
{
    /// <summary>The text of the file.</summary>
    internal static string Of(Curve curve)
    {
        Abscissa changed = curve.Abscissa;
        CsvTable table = new(
            changed.Unit.Length > 0 ? $"{changed.Name} [{changed.Unit}]" : changed.Name,
            "link [dB]", "ripple [dB]", "received [dBm]", "detector [V]", "amplifier [V]", "tone [Hz]", "lowest tone [Hz]",
            "highest tone [Hz]", "jitter [cents]", "state", "trust");
        foreach (CurvePoint point in curve.Points)
        {
            PointReport row = new(changed, point);
            // What was typed, without what radians leave behind: −60, not −59.99999999999999.
            object at = changed.Unit.Length == 0 ? point.Setting.Label : Math.Round(changed.Shown(point.Setting.At), 9);
            table.Row(
                at, row.LinkDb, row.RippleDb, row.ReceivedDbm, row.DetectorV, row.AmplifierV, row.ToneHz, row.LowestToneHz, row.HighestToneHz,
                row.JitterCents, Word(row.State), Word(row.Trust));
        }

        return table.ToString();
    }

    private static string Word(Enum state) => state.ToString().ToLowerInvariant();
}
