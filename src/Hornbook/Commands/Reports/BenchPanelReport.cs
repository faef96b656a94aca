using Hornbook.Bench.Layout;

namespace Hornbook.Commands.Reports;

/// <summary>A panel at hand, in words.</summary>
internal sealed record BenchPanelReport(string Name, string Kind, bool Stands, string What, string Where)
{
    internal static BenchPanelReport Of(BenchPanel panel) => new(panel.Name, panel.Kind, panel.Stands, panel.What, panel.Where);
}
