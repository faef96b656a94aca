using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>The beam width that the bench will show.</summary>
internal sealed record BeamWidthReport(
    BenchEnd Turned, string Antenna, double PeakAtDeg, double? HalfPowerWidthDeg, double? OwnHalfPowerWidthDeg, double? HandbookWidthDeg)
    : EvaluationReport
{
    internal static BeamWidthReport Of(BeamWidthEvaluation e) => new(
        e.Turned, e.Antenna, e.PeakAt * 180.0 / Math.PI, Degrees(e.HalfPowerWidth), Degrees(e.OwnHalfPowerWidth), Degrees(e.HandbookWidth));

    /// <inheritdoc/>
    internal override void Describe(TextPage page)
    {
        TextTable table = new(string.Empty, string.Empty, string.Empty);
        table.Row("Half-power width", Width(HalfPowerWidthDeg), "as this bench will show it");
        table.Row("  far away", Width(OwnHalfPowerWidthDeg), $"the antenna's own ({Antenna})");
        table.Row("  by the rule", Width(HandbookWidthDeg), "of handbooks");
        table.Row("Strongest at", Show.Fixed(PeakAtDeg, 1, "deg"), "off the present direction");
        page.Table(table);
    }

    private static string Width(double? degrees) => degrees is { } d ? Show.Fixed(d, 1, "deg") : "none";
}
