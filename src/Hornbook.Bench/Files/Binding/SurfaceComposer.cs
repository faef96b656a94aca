using Hornbook.Bench.Files.Format;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes the surface of a panel from its table.</summary>
internal static class SurfaceComposer
{
    /// <summary>The surface.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="frequency">Of the bench [Hz].</param>
    /// <exception cref="ArgumentException">The corners are no outline, the openings leave nothing, or it is bent too far.</exception>
    internal static PanelSurface Compose(BoundTable panel, double frequency) => panel.Word switch
    {
        PanelFormat.BentPlate => new BentSurface(Flat(panel), panel.Number("radius"), Axis(panel), SheetFace.Front),
        PanelFormat.Dish => new DishSurface(panel.Number("diameter"), panel.Number("focal_length"), panel.Number("hole_diameter", 0.0)),
        PanelFormat.ZonePlate => Zones(panel, FreeSpace.Wavelength(panel.Number("cut_for", frequency)))
            .Cut(Outline(panel), panel.TextOrNull("centre") != ShapedFormat.Closed),
        _ => Flat(panel),
    };

    /// <summary>The direction that stays straight when a plate is bent.</summary>
    internal static BendAxis Axis(BoundTable panel) => panel.TextOrNull("bent_about") == ShapedFormat.Across ? BendAxis.Y : BendAxis.Z;

    private static ZonePlateRings Zones(BoundTable panel, double wavelength) => panel.Has("focal_length")
        ? ZonePlateRings.For(wavelength, panel.Number("focal_length"), panel.Count("zones", 1))
        : ZonePlateRings.Between(wavelength, panel.Number("from_source"), panel.Number("to_receiver"), panel.Count("zones", 1));

    private static PanelSurface Flat(BoundTable panel)
    {
        Piece[] openings = [.. Openings(panel).Select(Piece.Removed)];
        return openings.Length == 0 && panel.Has("width")
            ? new RectangularSurface(panel.Number("width"), panel.Number("height"))
            : new FlatSurface(Outline(panel), openings);
    }

    /// <summary>The surface before anything is cut out of it.</summary>
    /// <exception cref="ArgumentException">The corners are no outline.</exception>
    internal static PanelSurface Outlined(BoundTable panel) => new FlatSurface(Outline(panel));

    /// <summary>What is cut out of it.</summary>
    private static IReadOnlyList<Shape> Openings(BoundTable panel) =>
    [
        .. panel.Table("slits") is BoundTable slits ? Slits(slits) : [],
        .. panel.List("holes").Select(item => Figure((BoundTable)item.Value)),
        .. panel.List("rings").Select(item => Ring((BoundTable)item.Value)),
    ];

    private static Shape Outline(BoundTable panel) => panel.Has("corners")
        ? new PolygonShape([.. panel.List("corners").Select(item => Corner((BoundTable)item.Value))])
        : Figure(panel);

    /// <summary>A rectangle or a disc about its middle; for a panel, whose y and z are places on the bench, about its own middle.</summary>
    private static Shape Figure(BoundTable figure)
    {
        (double y, double z) = figure.Word is null ? (figure.Number("y", 0.0), figure.Number("z", 0.0)) : (0.0, 0.0);
        return figure.Has("diameter")
            ? new DiscShape(y, z, 0.5 * figure.Number("diameter"))
            : new RectangleShape(y, z, figure.Number("width"), figure.Number("height"), figure.Number("angle", 0.0));
    }

    private static (double Y, double Z) Corner(BoundTable corner) => (corner.Number("y"), corner.Number("z"));

    private static IEnumerable<Shape> Slits(BoundTable slits)
    {
        int count = slits.Count("count", 1);
        double angle = slits.Number("angle", 0.0);
        (double sin, double cos) = Math.SinCos(angle);
        for (int i = 0; i < count; i++)
        {
            double aside = (i - (0.5 * (count - 1))) * slits.Number("spacing", 0.0);
            yield return new RectangleShape(aside * cos, aside * sin, slits.Number("width"), slits.Number("length"), angle);
        }
    }

    private static RingShape Ring(BoundTable ring) => new(0.0, 0.0, 0.5 * ring.Number("inner_diameter"), 0.5 * ring.Number("outer_diameter"));
}
