using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>How the panels lie on the sheet.</summary>
internal sealed record SheetReport(double UsedWidthM, double UsedHeightM, IReadOnlyList<PanelReport> Panels)
{
    internal static SheetReport Of(PanelLayout layout) => new(layout.Width, layout.Height, [.. layout.Panels.Select(PanelReport.Of)]);
}
