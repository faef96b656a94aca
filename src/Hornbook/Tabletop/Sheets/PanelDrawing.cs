using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Tabletop.Sheets;

/// <summary>What is seen of a panel on the sheet: its real size, turned, tilted and rolled.</summary>
/// <param name="Slab">The whole of it with its thickness, a convex polygon: what is taken hold of.</param>
/// <param name="Face">Its outline and openings as one path.</param>
/// <param name="Centre">Its middle.</param>
/// <param name="Knob">Where the knob for turning or tilting sits, behind it.</param>
/// <param name="StripTip">One end of the mark along its strips; null where it has none.</param>
/// <param name="StripTail">The other end.</param>
public sealed record PanelDrawing(
    IReadOnlyList<SheetPoint> Slab, string Face, SheetPoint Centre, SheetPoint Knob, SheetPoint? StripTip, SheetPoint? StripTail)
{
    // A sheet of a millimetre would be a hair on the sheet; it is drawn as thick as a finger is wide [m].
    private const double LeastThickness = 0.008;
    private const double KnobGap = 0.07;
    private const double StripMark = 0.055;

    public static PanelDrawing Of(BenchPanel panel, Pose pose, SheetLayout sheet, SheetView view)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(sheet);
        double half = 0.5 * Math.Max(LeastThickness, panel.Panel.Sheet.Thickness);
        IReadOnlyList<IReadOnlyList<Vector>> loops = panel.Panel.Surface.Loops;
        SheetPoint[] corners = [.. loops.SelectMany(loop => loop).SelectMany(p => new[] { See(p + new Vector(half, 0.0, 0.0)), See(p - new Vector(half, 0.0, 0.0)) })];
        double? strips = PanelFace.Strips(panel.Panel.Sheet);
        return new PanelDrawing(
            ConvexHull.Of(corners),
            PanelFace.Path(loops, See),
            See(Vector.Zero),
            See(new Vector(-KnobGap, 0.0, 0.0)),
            strips is { } tip ? See(PanelFace.Along(tip) * StripMark) : null,
            strips is { } tail ? See(PanelFace.Along(tail) * -StripMark) : null);

        SheetPoint See(Vector own) => sheet.Project(view, pose.ToBench(own));
    }
}
