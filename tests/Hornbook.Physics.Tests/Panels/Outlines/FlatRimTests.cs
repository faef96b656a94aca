using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Boundaries;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class FlatRimTests
{
    private const double Spacing = 1e-2;

    // Farther than the boundary's own tolerance, a millionth of half a metre.
    private const double Step = 2e-6;

    [Fact]
    public void Feet_lie_where_the_sheet_ends_and_point_into_it() => SampleOutlines.Any.Sample(
        plate =>
        {
            foreach (RimFoot foot in plate.Cells(Spacing).SelectMany(cell => Feet(plate, cell.Centre)).Where(foot => IsClear(plate, foot)))
            {
                Assert.True(plate.Contains(foot.Place + (foot.Inward * Step)));
                Assert.False(plate.Contains(foot.Place - (foot.Inward * Step)));
            }
        },
        iter: 20);

    [Fact]
    public void Feet_stand_at_right_angles_at_their_distance() => SampleOutlines.Any.Sample(
        plate =>
        {
            foreach (Cell cell in plate.Cells(Spacing))
            {
                Assert.All(Feet(plate, cell.Centre), foot =>
                {
                    Close.Relative(1.0, foot.Inward.Length, 1e-12);
                    Assert.Equal(new Vector(1.0, 0.0, 0.0), foot.Normal);
                    Close.Absolute(0.0, (foot.Place + (foot.Inward * foot.Distance) - cell.Centre).Length, 1e-12);
                });
            }
        },
        iter: 20);

    [Fact]
    public void The_nearest_point_of_the_outline_is_a_foot_or_a_corner() => SampleOutlines.Any.Sample(
        plate =>
        {
            Vector[] outline = [.. plate.Boundary.SelectMany(Points)];
            Vector[] ends = [.. plate.Boundary.SelectMany(Ends)];
            foreach (Cell cell in plate.Cells(0.02))
            {
                // The outline as a dense row of points, 0.3 mm apart: none is nearer than the line, but for rounding where one lies on the foot.
                Vector nearest = outline.MinBy(point => (point - cell.Centre).Length);
                double distance = (nearest - cell.Centre).Length;
                bool isFoot = Feet(plate, cell.Centre).Any(foot => foot.Distance <= distance + 1e-12 && (foot.Place - nearest).Length < 3e-4);
                Assert.True(isFoot || ends.Any(end => (end - nearest).Length < 3e-4));
            }
        },
        iter: 10);

    [Fact]
    public void Touching_figures_leave_no_line_between_them()
    {
        FlatSurface two = new(new RectangleShape(-0.05, 0.0, 0.1, 0.2), Piece.Added(new RectangleShape(0.05, 0.0, 0.1, 0.2)));
        // derived: the outline of 200 × 200 mm.
        Close.Relative(0.8, two.Rims.Sum(rim => rim.Length), 1e-12);
    }

    [Fact]
    public void A_slit_that_runs_out_of_the_edge_takes_its_part_of_the_edge()
    {
        FlatSurface plate = new(new RectangleShape(0.0, 0.0, 0.3, 0.2), Piece.Removed(new RectangleShape(0.0, 0.1, 0.01, 0.1)));
        // derived: 2 (300 + 200) mm, less the mouth of 10 mm, and 50 + 10 + 50 mm in the slit; eight pieces.
        Assert.Equal(8, plate.Rims.Count);
        Close.Relative(1.1, plate.Rims.Sum(rim => rim.Length), 1e-12);
    }

    [Fact]
    public void Overlapping_holes_are_bounded_by_the_arcs_outside_each_other()
    {
        FlatSurface plate = new(
            new RectangleShape(0.0, 0.0, 0.3, 0.2), Piece.Removed(new DiscShape(-0.025, 0.0, 0.05)), Piece.Removed(new DiscShape(0.025, 0.0, 0.05)));
        // derived: the circles cross at ±60° from the line of their centres, so that 120° of each is inside the other.
        Assert.Equal(6, plate.Rims.Count);
        Close.Relative(1.0 + (2.0 * 0.05 * Math.Tau * 2.0 / 3.0), plate.Rims.Sum(rim => rim.Length), 1e-12);
    }

    [Fact]
    public void A_hole_that_only_touches_another_line_stays_one_circle()
    {
        FlatSurface plate = new(
            new RectangleShape(0.0, 0.0, 0.3, 0.2), Piece.Removed(new DiscShape(0.0, 0.0, 0.05)), Piece.Removed(new DiscShape(-0.1, 0.0, 0.05)));
        // derived: two circles that touch in a point.
        Assert.Equal(6, plate.Rims.Count);
        Close.Relative(1.0 + (2.0 * Math.Tau * 0.05), plate.Rims.Sum(rim => rim.Length), 1e-12);
    }

    [Fact]
    public void A_side_that_two_figures_share_is_one_rim()
    {
        FlatSurface plate = new(new RectangleShape(0.0, 0.0, 0.3, 0.2), Piece.Added(new RectangleShape(0.0, 0.05, 0.1, 0.1)));
        // derived: the second figure lies within the first, flush with its upper side.
        Assert.Equal(4, plate.Rims.Count);
        Close.Relative(1.0, plate.Rims.Sum(rim => rim.Length), 1e-12);
    }

    [Fact]
    public void An_arc_goes_on_over_a_point_where_another_hole_touches()
    {
        FlatSurface plate = new(
            new RectangleShape(0.0, 0.0, 0.3, 0.2),
            Piece.Removed(new DiscShape(0.0, 0.0, 0.05)),
            Piece.Removed(new DiscShape(0.1, 0.0, 0.05)),
            Piece.Removed(new RectangleShape(-0.075, 0.0, 0.1, 0.02)));
        // derived: four sides, the touching circle, three sides of the slit and what it leaves of the first circle.
        Assert.Equal(9, plate.Rims.Count);
    }

    [Fact]
    public void From_a_disc_the_foot_lies_at_the_nearer_end_of_the_diameter_and_the_centre_has_none()
    {
        Rim rim = Assert.Single(new FlatSurface(new DiscShape(0.0, 0.0, 0.1)).Rims);
        Assert.Null(rim.Foot(Vector.Zero));
        RimFoot foot = Assert.NotNull(rim.Foot(new Vector(0.0, 0.0, -0.03)));
        // derived: 100 − 30 mm below the centre.
        Close.Absolute(0.07, foot.Distance, 1e-15);
        Close.Absolute(0.0, (foot.Place - new Vector(0.0, 0.0, -0.1)).Length, 1e-15);
        Close.Absolute(0.0, (foot.Inward - new Vector(0.0, 0.0, 1.0)).Length, 1e-15);
    }

    private static IEnumerable<RimFoot> Feet(FlatSurface plate, Vector point) =>
        plate.Rims.Select(rim => rim.Foot(point)).Where(foot => foot is not null).Select(foot => foot!.Value);

    // Close to a corner, a step aside may cross the other line.
    private static bool IsClear(FlatSurface plate, RimFoot foot) =>
        plate.Boundary.All(piece => Ends(piece).All(end => (end - foot.Place).Length > 1e-3));

    private static IEnumerable<Vector> Points(BoundaryPiece piece)
    {
        int steps = (int)Math.Ceiling((piece.To - piece.From) / 3e-4);
        return Enumerable.Range(0, steps + 1).Select(i => piece.Stroke.At(piece.From + ((piece.To - piece.From) * i / steps)));
    }

    private static Vector[] Ends(BoundaryPiece piece) => [piece.Stroke.At(piece.From), piece.Stroke.At(piece.To)];
}
