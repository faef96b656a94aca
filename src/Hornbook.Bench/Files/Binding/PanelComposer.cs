using Hornbook.Bench.Layout;
using Hornbook.Physics.Panels;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a panel from its table.</summary>
internal static class PanelComposer
{
    /// <summary>The panel.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="panel">Its table.</param>
    /// <param name="frequency">Of the bench [Hz].</param>
    internal static BenchPanel Compose(string name, BoundTable panel, double frequency) => new(
        name, new Panel(SurfaceComposer.Compose(panel, frequency), SheetComposer.Compose(panel)), PoseComposer.Compose(panel), !panel.IsTrue("aside"))
    {
        Kind = panel.Word!,
    };
}
