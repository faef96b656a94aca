using Hornbook.Bench.Files.Format;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes what a panel consists of from its table.</summary>
internal static class SheetComposer
{
    /// <summary>The sheet of a panel.</summary>
    internal static ISheet Compose(BoundTable panel) => panel.Word switch
    {
        PanelFormat.MetalPlate or PanelFormat.BentPlate or PanelFormat.Dish or PanelFormat.ZonePlate => new Metal(),
        PanelFormat.StripGrid => Laid(Strips(panel), panel.Number("strips", 0.0)),
        PanelFormat.WireGrid => Laid(new WireGrid(panel.Number("period"), panel.Number("wire_diameter")), panel.Number("wires", 0.0)),
        PanelFormat.HalfMirror => ImpedanceSheet.Mirror(Squared(panel.Number("reflection", Math.Sqrt(0.5)))),
        PanelFormat.Film => new ImpedanceSheet(panel.Number("resistance")),
        PanelFormat.Absorber => Rated(Squared(panel.Number("reflection")), Squared(panel.Number("transmission", 0.0)), panel.Number("thickness")),
        PanelFormat.Sheet => new LayeredSheet(Layer(panel)),
        _ => new LayeredSheet([.. panel.List("layers").Select(item => Layer((BoundTable)item.Value))]),
    };

    // 0.8 and 0.6 take it all, but their squares round to a bit more than one.
    private static Absorber Rated(double returned, double passed, double thickness) => new(returned, Math.Min(passed, 1.0 - returned), thickness);

    private static double Squared(double amplitude) => amplitude * amplitude;

    /// <summary>The layer that a table with a material and a thickness states.</summary>
    internal static Layer Layer(BoundTable layer) => new(Material(layer), layer.Number("thickness"));

    private static Dielectric Material(BoundTable holder) => holder.Table("material") is BoundTable numbers
        ? new LaboratoryDielectric(
            FormattableString.Invariant($"a material of permittivity {numbers.Number("permittivity"):0.###}"), numbers.Number("permittivity"), numbers.Number("loss_tangent", 0.0))
        : Dielectrics.Find(holder.Text("material"))!;

    private static ISheet Strips(BoundTable panel)
    {
        StripGrid strips = new(panel.Number("period"), panel.Number("strip_width"));
        return panel.Table("board") is BoundTable board ? new BoardedStripGrid(strips, new LayeredSheet(Layer(board))) : strips;
    }

    private static ISheet Laid(ISheet grid, double angle) => angle == 0.0 ? grid : new TurnedSheet(grid, angle);
}
