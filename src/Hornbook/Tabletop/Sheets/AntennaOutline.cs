using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Tabletop.Sheets;

/// <summary>What is seen of an antenna on the sheet: its real inside dimensions, turned, tilted and rolled, in outline.</summary>
/// <param name="Guide">The piece of guide behind the throat, a convex polygon.</param>
/// <param name="Flare">From throat to mouth, a convex polygon; for an open guide no wider than the guide.</param>
/// <param name="Mouth">The rim of the mouth, four corners.</param>
/// <param name="Centre">Centre of the mouth.</param>
/// <param name="Knob">Where the knob for turning or tilting sits, behind the guide.</param>
/// <param name="FieldTip">Tip of the arrow along the electric field, from the centre.</param>
/// <param name="FieldTail">The arrow's other end.</param>
public sealed record AntennaOutline(
    IReadOnlyList<SheetPoint> Guide,
    IReadOnlyList<SheetPoint> Flare,
    IReadOnlyList<SheetPoint> Mouth,
    SheetPoint Centre,
    SheetPoint Knob,
    SheetPoint FieldTip,
    SheetPoint FieldTail)
{
    /// <summary>Length of guide drawn behind the throat [m]; the bench file does not say how much there is.</summary>
    public const double GuideShown = 0.05;

    /// <summary>From the end of the guide shown to the knob [m].</summary>
    private const double KnobGap = 0.04;

    /// <summary>Shortest length of a flare that is drawn for an open guide [m].</summary>
    private const double OpenEndShown = 0.03;

    private const double FieldArrowHalf = 0.055;

    public static AntennaOutline Of(AntennaShape shape, Pose pose, SheetLayout sheet, SheetView view)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(sheet);
        double length = LengthBehindMouth(shape);
        SheetPoint[] mouth = Rim(0.0, shape.MouthWidth, shape.MouthHeight);
        SheetPoint[] throat = Rim(-length, shape.Guide.Width, shape.Guide.Height);
        SheetPoint[] end = Rim(-length - GuideShown, shape.Guide.Width, shape.Guide.Height);
        return new AntennaOutline(
            ConvexHull.Of([.. throat, .. end]),
            ConvexHull.Of([.. mouth, .. throat]),
            mouth,
            See(Vector.Zero),
            See(new Vector(-length - GuideShown - KnobGap, 0.0, 0.0)),
            See(new Vector(0.0, 0.0, FieldArrowHalf)),
            See(new Vector(0.0, 0.0, -FieldArrowHalf)));

        SheetPoint See(Vector own) => sheet.Project(view, pose.ToBench(own));

        SheetPoint[] Rim(double x, double width, double height) =>
        [
            See(new Vector(x, width / 2.0, height / 2.0)),
            See(new Vector(x, -width / 2.0, height / 2.0)),
            See(new Vector(x, -width / 2.0, -height / 2.0)),
            See(new Vector(x, width / 2.0, -height / 2.0)),
        ];
    }

    /// <summary>From the mouth back to the throat [m].</summary>
    public static double LengthBehindMouth(AntennaShape shape) => shape is Horn horn ? horn.Length : OpenEndShown;
}
