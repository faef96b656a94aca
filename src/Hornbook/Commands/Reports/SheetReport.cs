using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Commands.Reports;

/// <summary>How the panels lie on the sheet.</summary>
internal sealed record SheetReport(double UsedWidthM, double UsedHeightM, IReadOnlyList<WallReport> Panels)
{
    internal static SheetReport Of(WallLayout layout) => new(layout.Width, layout.Height, [.. layout.Walls.Select(WallReport.Of)]);
}
