using CsCheck;
using Hornbook.Physics;
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
        Pose after = new Drag(grip, view, start, held, new SheetPoint(400.0, -100.0)).At(held);
        Close.Absolute(0.0, (after.Position - start.Position).Length, 1e-12);
        Close.Absolute(start.Turn, after.Turn, 1e-12);
        Close.Absolute(start.Tilt, after.Tilt, 1e-12);
        Close.Absolute(start.Roll, after.Roll, 1e-12);
    });

    [Fact]
    public void A_move_in_the_plan_is_to_scale_and_leaves_the_height() => Gen.Select(Place, Place).Sample((held, to) =>
    {
        Pose after = new Drag(Grip.Move, SheetView.Plan, new Pose(new Vector(1.0, 0.0, 0.2)), held, default).At(to);
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
        Close.Absolute(expectedDeg, drag.At(new SheetPoint(toX, toY)).Turn / Degree, 1e-9);
    }

    [Theory]
    [InlineData(0.0, -100.0)]
    [InlineData(180.0, 100.0)]
    public void Pulling_the_tail_down_tilts_the_mouth_up(double turnDeg, double tailX)
    {
        Drag drag = new(Grip.Tilt, SheetView.Elevation, new Pose(Vector.Zero, turnDeg * Degree), new SheetPoint(tailX, 0.0), default);
        // derived: down by as much as the tail stands behind is 45°.
        Close.Absolute(45.0, drag.At(new SheetPoint(tailX, 100.0)).Tilt / Degree, 1e-9);
    }

    [Fact]
    public void A_tilt_ends_at_straight_up()
    {
        Drag drag = new(Grip.Tilt, SheetView.Elevation, new Pose(Vector.Zero, tilt: 80.0 * Degree), new SheetPoint(-100.0, 0.0), default);
        Close.Absolute(90.0, drag.At(new SheetPoint(-10.0, 100.0)).Tilt / Degree, 1e-9);
    }

    [Fact]
    public void A_dial_rolls_clockwise_as_it_is_pulled_clockwise()
    {
        Drag drag = new(Grip.Roll, SheetView.Plan, new Pose(Vector.Zero), new SheetPoint(0.0, -50.0), default);
        Close.Absolute(90.0, drag.At(new SheetPoint(50.0, 0.0)).Roll / Degree, 1e-9);
    }
}
