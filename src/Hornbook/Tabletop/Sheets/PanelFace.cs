using System.Globalization;
using System.Text;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Tabletop.Sheets;

/// <summary>A panel as it is seen from behind, unrolled, on its dial.</summary>
/// <param name="Outline">Its outline and openings as one path, in true proportions.</param>
/// <param name="StripTip">One end of the mark along its strips, from its middle; null where it has none.</param>
public sealed record PanelFace(string Outline, SheetPoint? StripTip)
{
    // As large as fits inside the ring of a dial.
    private const double Radius = 40.0;

    public static PanelFace Of(BenchPanel panel)
    {
        ArgumentNullException.ThrowIfNull(panel);
        IReadOnlyList<IReadOnlyList<Vector>> loops = panel.Panel.Surface.Loops;
        double scale = Radius / loops.SelectMany(loop => loop).Max(point => Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z)));
        Vector? strips = Strips(panel.Panel.Sheet) is { } angle ? Along(angle) : null;
        return new PanelFace(Path(loops, own => FromBehind(own * scale)), strips is { } along ? FromBehind(along * (0.8 * Radius)) : null);
    }

    /// <summary>How far its strips or wires lie from its upright [rad]; null where it has none.</summary>
    internal static double? Strips(ISheet sheet) => sheet switch
    {
        TurnedSheet turned when Strips(turned.Sheet) is { } angle => angle + turned.Angle,
        StripGrid or BoardedStripGrid or WireGrid => 0.0,
        _ => null,
    };

    /// <summary>The direction of strips in the panel's own frame.</summary>
    internal static Vector Along(double angle) => new(0.0, -Math.Sin(angle), Math.Cos(angle));

    /// <summary>Loops as one path.</summary>
    internal static string Path(IReadOnlyList<IReadOnlyList<Vector>> loops, Func<Vector, SheetPoint> see)
    {
        StringBuilder path = new();
        foreach (IReadOnlyList<Vector> loop in loops)
        {
            path.Append(CultureInfo.InvariantCulture, $"M{string.Join('L', loop.Select(see))}Z");
        }

        return path.ToString();
    }

    // Whoever looks along +x has y on the left hand and z above; a drawing counts to the right and down.
    private static SheetPoint FromBehind(Vector own) => new(-own.Y, -own.Z);
}
