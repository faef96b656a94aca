using CsCheck;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Hands;

public sealed class DragTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly Gen<double> Millimetre = Gen.Double[-400.0, 400.0];

    private static readonly Gen<SheetPoint> Place = Gen.Select(Millimetre, Millimetre, (x, y) => new SheetPoint(x, y));

    [Fact]
    public void Nothing_jumps_at_the_first_touch() => Gen.Select(Place, Gen.Enum<Grip>(), Gen.Enum<SheetView>()).Sample((held, grip, view) =>
    {
        Pose start = new(new Vector(0.4, 0.1, 0.2), 30.0 * Degree, 10.0 * Degree, 5.0 * Degree);
        Pose after = new Drag(grip, view, start, held, new SheetPoint(400.0, -100.0)).At(held, HandSteps.Fine);
        Close.Absolute(0.0, (after.Position - start.Position).Length, 1e-12);
        Close.Absolute(start.Turn, after.Turn, 1e-12);
        Close.Absolute(start.Tilt, after.Tilt, 1e-12);
        Close.Absolute(start.Roll, after.Roll, 1e-12);
    });

    [Fact]
    public void A_move_in_the_plan_is_to_scale_and_leaves_the_height() => Gen.Select(Place, Place).Sample((held, to) =>
    {
        Pose after = new Drag(Grip.Move, SheetView.Plan, new Pose(new Vector(1.0, 0.0, 0.2)), held, default).At(to, HandSteps.Fine);
        // derived: the sheet is in millimetres with y down, the bench in metres with y up the sheet; rounded to 1 mm.
        Close.Absolute(1.0 + (1e-3 * (to.X - held.X)), after.Position.X, 0.51e-3);
        Close.Absolute(1e-3 * (held.Y - to.Y), after.Position.Y, 0.51e-3);
        Assert.Equal(0.2, after.Position.Z);
    });

    [Theory]
    // The knob is behind the mouth: pulling the tail down the sheet (to the right of the bench) turns the source's mouth to the left.
    [InlineData(0.0, -100.0, 0.0, 0.0, 100.0, 90.0)]
    // The receiver looks back along the bench; its tail is on the other side.
    [InlineData(180.0, 100.0, 0.0, 0.0, 100.0, 90.0)]
    public void The_tail_is_pulled_round_the_mouth(double turnDeg, double fromX, double fromY, double toX, double toY, double expectedDeg)
    {
        Drag drag = new(Grip.Turn, SheetView.Plan, new Pose(Vector.Zero, turnDeg * Degree), new SheetPoint(fromX, fromY), default);
        Close.Absolute(expectedDeg, drag.At(new SheetPoint(toX, toY), HandSteps.Fine).Turn / Degree, 1e-9);
    }

    [Theory]
    [InlineData(0.0, -100.0)]
    [InlineData(180.0, 100.0)]
    public void Pulling_the_tail_down_tilts_the_mouth_up(double turnDeg, double tailX)
    {
        Drag drag = new(Grip.Tilt, SheetView.Elevation, new Pose(Vector.Zero, turnDeg * Degree), new SheetPoint(tailX, 0.0), default);
        // derived: down by as much as the tail stands behind is 45°.
        Close.Absolute(45.0, drag.At(new SheetPoint(tailX, 100.0), HandSteps.Fine).Tilt / Degree, 1e-9);
    }

    [Fact]
    public void A_tilt_ends_at_straight_up()
    {
        Drag drag = new(Grip.Tilt, SheetView.Elevation, new Pose(Vector.Zero, tilt: 80.0 * Degree), new SheetPoint(-100.0, 0.0), default);
        Close.Absolute(90.0, drag.At(new SheetPoint(-10.0, 100.0), HandSteps.Fine).Tilt / Degree, 1e-9);
    }

    [Fact]
    public void A_dial_rolls_clockwise_as_it_is_pulled_clockwise()
    {
        Drag drag = new(Grip.Roll, SheetView.Plan, new Pose(Vector.Zero), new SheetPoint(0.0, -50.0), default);
        Close.Absolute(90.0, drag.At(new SheetPoint(50.0, 0.0), HandSteps.Fine).Roll / Degree, 1e-9);
    }

    [Fact]
    public void Snapping_goes_in_whole_steps_along_what_was_moved_and_leaves_the_rest()
    {
        Pose start = new(new Vector(1.003, 0.002, 0.25));
        Pose moved = new Drag(Grip.Move, SheetView.Plan, start, default, default).At(new SheetPoint(48.0, 1.0), HandSteps.Coarse(LengthUnit.Centimetre));
        // derived: 1.003 m and 48 mm are 1.051 m, to whole centimetres 1.05; across it went 1 mm only, less than half a step.
        Close.Absolute(1.05, moved.Position.X, 1e-12);
        Assert.Equal(0.002, moved.Position.Y);
        Assert.Equal(0.25, moved.Position.Z);
    }

    [Fact]
    public void Snapping_turns_in_steps_of_five_degrees()
    {
        Drag drag = new(Grip.Turn, SheetView.Plan, new Pose(Vector.Zero, 2.0 * Degree), new SheetPoint(-100.0, 0.0), default);
        // derived: the tail goes 20 mm down at 100 mm behind, 11.3°; with the 2° before 13.3°, nearest to 15°.
        Close.Absolute(15.0, drag.At(new SheetPoint(-100.0, 20.0), HandSteps.Coarse(LengthUnit.Centimetre)).Turn / Degree, 1e-9);
    }

    [Fact]
    public void In_inches_it_snaps_to_half_ones()
    {
        Pose moved = new Drag(Grip.Move, SheetView.Plan, new Pose(Vector.Zero), default, default).At(new SheetPoint(50.0, 0.0), HandSteps.Coarse(LengthUnit.Inch));
        // derived: 50 mm are 1.97 in, nearest to 2 in of 25.4 mm.
        Close.Absolute(0.0508, moved.Position.X, 1e-12);
    }
}
