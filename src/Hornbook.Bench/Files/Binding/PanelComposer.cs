using Hornbook.Bench.Layout;
using Hornbook.Physics.Panels;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a panel from its table.</summary>
internal static class PanelComposer
{
    /// <summary>The panel.</summary>
    internal static BenchPanel Compose(string name, BoundTable panel) => new(
        name, new Panel(SurfaceComposer.Compose(panel), SheetComposer.Compose(panel)), PoseComposer.Compose(panel), !panel.IsTrue("aside"))
    {
        Kind = panel.Word!,
    };
}
