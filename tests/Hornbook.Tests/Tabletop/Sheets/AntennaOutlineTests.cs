using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Tabletop.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sheets;

public sealed class AntennaOutlineTests
{
    private static readonly Horn Horn = (Horn)ExampleBench.Scene.Plan.Antenna("large-horn");

    private static readonly SheetLayout Sheet = SheetLayout.For(ExampleBench.Scene.Plan);

    [Fact]
    public void From_above_a_horn_is_as_wide_and_as_long_as_it_is_built()
    {
        AntennaOutline seen = AntennaOutline.Of(Horn, new Pose(new Vector(0.5, 0.0, 0.2)), Sheet, SheetView.Plan);
        Close.Relative(1e3 * Horn.MouthWidth, Extent(seen.Flare, p => p.Y), 1e-12);
        Close.Relative(1e3 * Horn.Length, Extent(seen.Flare, p => p.X), 1e-12);
        Close.Relative(1e3 * Horn.Guide.Width, Extent(seen.Guide, p => p.Y), 1e-12);
    }

    [Fact]
    public void From_the_side_it_shows_its_height_and_its_field()
    {
        AntennaOutline seen = AntennaOutline.Of(Horn, new Pose(new Vector(0.5, 0.0, 0.2)), Sheet, SheetView.Elevation);
        Close.Relative(1e3 * Horn.MouthHeight, Extent(seen.Flare, p => p.Y), 1e-12);
        Assert.True(seen.FieldTip.Y < seen.Centre.Y, "an upright field points up the sheet");
    }

    [Fact]
    public void Rolled_by_a_quarter_it_shows_the_other_side_and_the_field_lies_down()
    {
        AntennaOutline seen = AntennaOutline.Of(Horn, new Pose(new Vector(0.5, 0.0, 0.2), roll: Math.PI / 2.0), Sheet, SheetView.Plan);
        Close.Relative(1e3 * Horn.MouthHeight, Extent(seen.Flare, p => p.Y), 1e-12);
        // derived: right-handed about +x takes the field from up to the right, which is down the sheet.
        Assert.True(seen.FieldTip.Y > seen.Centre.Y);
    }

    [Fact]
    public void Turned_by_60_degrees_it_is_foreshortened_along_the_bench()
    {
        AntennaOutline seen = AntennaOutline.Of(Horn, new Pose(new Vector(0.5, 0.0, 0.2), turn: Math.PI / 3.0), Sheet, SheetView.Elevation);
        // derived: the mouth's near and far edges lie A sin 60° apart, the axis is L cos 60° long; the throat hides behind.
        double expected = (Horn.Length * Math.Cos(Math.PI / 3.0)) + (0.5 * (Horn.MouthWidth + Horn.Guide.Width) * Math.Sin(Math.PI / 3.0));
        Close.Relative(1e3 * expected, Extent(seen.Flare, p => p.X), 1e-9);
    }

    [Fact]
    public void Both_views_stand_at_the_same_x()
    {
        Pose pose = new(new Vector(0.7, 0.1, 0.2), 0.3, 0.2, 0.1);
        Close.Absolute(
            AntennaOutline.Of(Horn, pose, Sheet, SheetView.Plan).Knob.X,
            AntennaOutline.Of(Horn, pose, Sheet, SheetView.Elevation).Knob.X,
            1e-9);
    }

    private static double Extent(IEnumerable<SheetPoint> points, Func<SheetPoint, double> along) => points.Max(along) - points.Min(along);
}
