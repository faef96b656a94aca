using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Exchange.Symmetries;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Exchange.Symmetries;

public static class BenchSymmetryTests
{
    private static readonly StripGrid Grid = new(5e-3, 2.5e-3);
    private static readonly LayeredSheet Glass = new(new Layer(Dielectrics.Find("glass")!, 4e-3));

    private static FlatSurface TwoSlits => new(new RectangleShape(0.0, 0.0, 0.3, 0.3), Piece.Removed(new RectangleShape(0.03, 0.0, 0.02, 0.2)), Piece.Removed(new RectangleShape(-0.03, 0.0, 0.02, 0.2)));

    private static BenchSymmetry Of(Pose source, params PosedPanel[] panels) => BenchSymmetry.Of(new Mouth(LargeHorn, source), panels);

    private static (int Sideways, int Upright, int HalfTurn) Signs(BenchSymmetry symmetry) => (symmetry.Sideways, symmetry.Upright, symmetry.HalfTurn);

    // A mirror that stands upright leaves an upright field as it is, one that lies flat turns it over.
    [Fact]
    public static void A_plate_on_the_axis_has_both_mirror_planes_and_the_half_turn() =>
        Assert.Equal((1, -1, -1), Signs(Of(AtOrigin, Square(new Metal(), 0.15, new Pose(new Vector(0.4, 0.0, 0.0))))));

    [Fact]
    public static void A_plate_beside_the_axis_or_turned_has_the_flat_mirror_plane_only()
    {
        Assert.Equal((0, -1, 0), Signs(Of(AtOrigin, Square(new Metal(), 0.15, new Pose(new Vector(0.4, 1e-3, 0.0))))));
        Assert.Equal((0, -1, 0), Signs(Of(AtOrigin, Square(new Metal(), 0.15, new Pose(new Vector(0.4, 0.0, 0.0), turn: 0.3)))));
    }

    [Fact]
    public static void Strips_at_45_degrees_leave_the_half_turn_only()
    {
        Assert.Equal((0, 0, -1), Signs(Of(AtOrigin, Square(Grid, 0.15, new Pose(new Vector(0.4, 0.0, 0.0), roll: 0.25 * Math.PI)))));
        Assert.Equal((0, 0, -1), Signs(Of(AtOrigin, Square(new TurnedSheet(Grid, 0.25 * Math.PI), 0.15, new Pose(new Vector(0.4, 0.0, 0.0))))));
    }

    [Fact]
    public static void A_panel_has_what_all_have()
    {
        PosedPanel onAxis = Square(Glass, 0.15, new Pose(new Vector(0.4, 0.0, 0.0))), above = Square(Glass, 0.15, new Pose(new Vector(0.6, 0.0, 0.02)));
        Assert.Equal((1, 0, 0), Signs(Of(AtOrigin, onAxis, above)));
        Assert.Equal((0, 0, 0), Signs(Of(AtOrigin, onAxis, above, Square(Glass, 0.15, new Pose(new Vector(0.8, 0.02, 0.0))))));
    }

    // In a source's own frame: how source and panels are held together does not matter.
    [Theory]
    [InlineData(0.7, 0.0, 0.0)]
    [InlineData(-2.1, 0.4, 0.5 * Math.PI)]
    [InlineData(Math.PI, -0.3, 1.2)]
    public static void A_bench_that_is_turned_as_a_whole_has_the_same(double turn, double tilt, double roll)
    {
        Pose source = new(new Vector(0.3, 0.2, 0.45), turn, tilt, roll);
        PosedPanel panel = Square(new Metal(), 0.15, source with { Position = source.ToBench(new Vector(0.4, 0.0, 0.0)) });
        Assert.Equal((1, -1, -1), Signs(Of(source, panel)));
    }

    [Fact]
    public static void A_source_that_is_rolled_against_a_square_plate_leaves_the_half_turn_only() =>
        Assert.Equal((0, 0, -1), Signs(Of(new Pose(Vector.Zero, roll: 0.4), Square(new Metal(), 0.15, new Pose(new Vector(0.4, 0.0, 0.0))))));

    // Half a micrometre off the axis a bench has no symmetry left, and all of its panels is worked out; nothing else has changed.
    [Theory]
    [InlineData("plate")]
    [InlineData("edge")]
    [InlineData("panes")]
    [InlineData("box")]
    [InlineData("slits")]
    [InlineData("dish")]
    [InlineData("floor")]
    public static void What_part_of_the_panels_is_worked_out_does_not_change_what_is_read(string bench)
    {
        PosedPanel[] on = Bench(bench);
        PosedPanel[] off = [.. on.Select(panel => panel with { Pose = panel.Pose with { Position = panel.Pose.Position + new Vector(0.0, 5e-7, 5e-7) } })];
        Assert.NotEmpty(Of(AtOrigin, on).All);
        Assert.Empty(Of(AtOrigin, off).All);

        Illumination part = Illumination.Of(LargeHorn, AtOrigin, on), whole = Illumination.Of(LargeHorn, AtOrigin, off);
        Pose[] receivers = [new(new Vector(0.9, 0.0, 0.0), Math.PI), new(new Vector(0.8, 0.1, 0.05), 2.9, 0.1, 0.5), new(new Vector(-0.1, -0.2, 0.1), 0.2, 0.0, 1.2)];
        double strongest = receivers.Max(pose => whole.Parts(Probe, pose).Max(wave => wave.Magnitude));
        foreach (Pose pose in receivers)
        {
            Complex expected = whole.Link(Probe, pose), actual = part.Link(Probe, pose);

            // derived: where several panels have settled, up to 2e-3 of the currents may be missing in either; feet of round rims are shared a little differently on either side.
            Close.Absolute(0.0, (actual - expected).Magnitude / strongest, 2e-3);
        }

        // derived: the same, of what is thrown back alone.
        Close.Absolute(0.0, (part.SourceEcho() - whole.SourceEcho()).Magnitude / whole.SourceEcho().Magnitude, 5e-3);
    }

    // A bench that loses its symmetry, and one that finds it, begin anew with everything that listens elsewhere now.
    [Fact]
    public static void A_panel_that_is_moved_off_the_axis_and_back_is_read_as_if_it_had_always_stood_there()
    {
        PosedPanel[] on = Bench("panes"), off = [on[0] with { Pose = on[0].Pose with { Position = on[0].Pose.Position + new Vector(0.0, 0.02, 0.01) } }, on[1]];
        Pose receiver = new(new Vector(0.9, 0.03, 0.0), Math.PI);
        Illumination moved = Illumination.Of(LargeHorn, AtOrigin, on).Moved(off), back = moved.Moved(on);

        // derived: a fiftieth of a decibel is what may be missing of either.
        Close.Absolute(LevelDb(Illumination.Of(LargeHorn, AtOrigin, off).Link(Probe, receiver)), LevelDb(moved.Link(Probe, receiver)), 0.02);
        Close.Absolute(LevelDb(Illumination.Of(LargeHorn, AtOrigin, on).Link(Probe, receiver)), LevelDb(back.Link(Probe, receiver)), 0.02);
    }

    private static PosedPanel[] Bench(string name) => name switch
    {
        "plate" => [Square(new Metal(), 0.15, new Pose(new Vector(0.4, 0.0, 0.0)))],
        "edge" => [Rectangle(new Metal(), 0.2, 0.3, new Pose(new Vector(0.4, 0.1, 0.0)))],
        "panes" => [Square(Glass, 0.15, new Pose(new Vector(0.4, 0.0, 0.0))), Square(Glass, 0.15, new Pose(new Vector(0.47, 0.0, 0.0), Math.PI))],
        "box" => [Square(Grid, 0.15, new Pose(new Vector(0.4, 0.0, 0.0), roll: 0.25 * Math.PI)), Square(Glass, 0.1, new Pose(new Vector(0.5, 0.0, 0.0)))],
        "slits" => [new(PreparedPanel.At(new Panel(TwoSlits, new Metal()), Frequency), new Pose(new Vector(0.4, 0.0, 0.0)))],
        "dish" => [new(PreparedPanel.At(new Panel(new DishSurface(0.2, 0.1), new Metal()), Frequency), new Pose(new Vector(0.6, 0.0, 0.0), Math.PI))],
        _ => [Rectangle(new Metal(), 0.3, 0.6, new Pose(new Vector(0.5, 0.0, -0.12), tilt: 0.5 * Math.PI))],
    };
}
