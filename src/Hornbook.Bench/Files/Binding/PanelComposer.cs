using Hornbook.Bench.Layout;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes a panel from its table.</summary>
internal static class PanelComposer
{
    /// <summary>The panel.</summary>
    internal static BenchPanel Compose(string name, BoundTable panel) => new(
        name, new Panel(Surface(panel), SheetComposer.Compose(panel)), PoseComposer.Compose(panel), !panel.IsTrue("aside"))
    {
        Kind = panel.Word!,
    };

    private static RectangularSurface Surface(BoundTable panel) => new(panel.Number("width"), panel.Number("height"));
}
