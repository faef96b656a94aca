using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Lattices;

public static class LatticeTests
{
    private static Vector[] Places(PanelSurface surface, Pose pose) => [.. surface.Cells(0.005).Select(cell => Frame.Of(pose).Place(cell.Centre))];

    [Fact]
    public static void The_cells_of_a_rectangle_lie_on_one_however_it_is_held() =>
        Gen.Select(Gen.Double[0.011, 0.3], Gen.Double[0.011, 0.3], Gen.Double[-3.0, 3.0], Gen.Double[-1.5, 1.5], Gen.Double[-3.0, 3.0]).Sample(
            (width, height, turn, tilt, roll) =>
            {
                Vector[] places = Places(new RectangularSurface(width, height), new Pose(new Vector(1.2, -0.3, 0.4), turn, tilt, roll));
                Lattice lattice = Lattice.Of(places)!;
                Assert.Equal(places.Length, lattice.Count);
                Assert.All(places, (place, i) => Close.Absolute(0.0, (place - lattice.Place(i % lattice.Columns, i / lattice.Columns)).Length, 1e-12));
                Close.Absolute(0.0, (lattice.Middle - new Vector(1.2, -0.3, 0.4)).Length, 1e-12);
                Close.Relative(Math.Max(width, height), lattice.Side, 1e-9);
            },
            iter: 100);

    [Fact]
    public static void Those_of_a_disc_a_slit_screen_or_a_single_row_do_not()
    {
        Assert.Null(Lattice.Of(Places(new FlatSurface(new DiscShape(0.0, 0.0, 0.1)), default)));
        Assert.Null(Lattice.Of(Places(new FlatSurface(new RectangleShape(0.0, 0.0, 0.2, 0.2, 0.0), Piece.Removed(new RectangleShape(0.0, 0.0, 0.013, 0.1, 0.0))), default)));
        Assert.Null(Lattice.Of([Vector.Zero, new(0.0, 1.0, 0.0), new(0.0, 2.0, 0.0)]));
        Assert.Null(Lattice.Of([]));
    }

    [Fact]
    public static void A_place_out_of_line_is_seen()
    {
        Vector[] places = Places(new RectangularSurface(0.05, 0.05), default);
        places[37] += new Vector(1e-7, 0.0, 0.0);
        Assert.Null(Lattice.Of(places));
    }

    [Fact]
    public static void A_turn_about_the_middle_takes_places_to_places_half_a_turn_always_and_a_quarter_where_it_is_square() =>
        Gen.Select(Gen.Int[2, 9], Gen.Int[2, 9], Gen.Double[0.01, 0.3], Gen.Double[0.01, 0.3], Gen.Double[-3.0, 3.0], Gen.Bool).Sample(
            (columns, rows, width, height, roll, square) =>
            {
                (int last, double side) = square ? (columns, width) : (rows, height);
                Frame pose = Frame.Of(new Pose(new Vector(0.3, 0.2, 0.1), 0.4, -0.2, roll));
                Lattice lattice = new Lattice(default, new Vector(0.0, width / columns, 0.0), new Vector(0.0, 0.0, side / last), columns, last).Posed(pose);
                bool isSquare = columns == last && width == side;
                Assert.Equal(isSquare, lattice.IsSquare);
                int[] turns = isSquare ? [0, 1, 2, 3] : [0, 2];
                Assert.All(turns, quarters => Assert.All(Enumerable.Range(0, lattice.Count), place =>
                {
                    int to = lattice.Turned(place, quarters);
                    Vector arm = lattice.Place(place % columns, place / columns) - lattice.Middle;
                    Vector turned = quarters switch { 0 => arm, 1 => Vector.Cross(lattice.Normal, arm), 2 => -arm, _ => Vector.Cross(arm, lattice.Normal) };
                    Close.Absolute(0.0, (lattice.Middle + turned - lattice.Place(to % columns, to / columns)).Length, 1e-12);
                }));
            },
            iter: 100);

    [Fact]
    public static void One_that_is_turned_round_is_counted_from_the_other_end_and_one_with_other_steps_is_not_counted_alike()
    {
        Lattice one = Lattice.Of(Places(new RectangularSurface(0.05, 0.03), default))!;
        Lattice facing = Lattice.Of(Places(new RectangularSurface(0.05, 0.03), new Pose(new Vector(0.1, 0.0, 0.0), turn: Math.PI)))!;
        Lattice counted = facing.CountedAs(one)!;
        Close.Absolute(0.0, (counted.Column - one.Column).Length + (counted.Row - one.Row).Length, 1e-15);
        Close.Absolute(0.0, (counted.Place(facing.Columns - 1, 0) - facing.First).Length, 1e-15);
        Assert.Null(Lattice.Of(Places(new RectangularSurface(0.05, 0.03), new Pose(default, roll: 0.01)))!.CountedAs(one));
        Assert.Null(Lattice.Of(Places(new RectangularSurface(0.051, 0.03), default))!.CountedAs(one));
    }
}
