using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class FlatSurfaceTests
{
    // A third of a wavelength at 10.5 GHz, coarser than what is used, for the sake of time.
    private const double Spacing = 1e-2;

    private static readonly RectangleShape Plate = new(0.0, 0.0, 0.3, 0.2);

    public sealed class Constructor
    {
        [Fact]
        public void Takes_its_size_from_what_is_left()
        {
            FlatSurface plate = new(Plate, Piece.Removed(new RectangleShape(0.15, 0.0, 0.1, 0.3)), Piece.Added(new DiscShape(0.0, 0.1, 0.05)));
            // derived: 50 mm cut off one end of 300 mm; a disc that stands out by 50 mm above 200 mm.
            Close.Absolute(0.25, plate.Width, 1e-12);
            Close.Absolute(0.25, plate.Height, 1e-12);
        }

        [Fact]
        public void Rejects_a_panel_of_which_nothing_is_left()
        {
            ArgumentException error = Assert.Throws<ArgumentException>(() => new FlatSurface(Plate, Piece.Removed(new DiscShape(0.0, 0.0, 1.0))));
            Assert.StartsWith("pieces: nothing is left of the panel; must leave some of it", error.Message, StringComparison.Ordinal);
        }
    }

    public sealed class Cells
    {
        [Fact]
        public void Have_the_area_within_the_outline() => SampleOutlines.Any.Sample(
            // 1e-4: arcs as polygons of 180 corners.
            plate => Close.Relative(SampleOutlines.AreaWithin(plate.Boundary), plate.Cells(Spacing).Sum(cell => cell.Area), 1e-4),
            iter: 20);

        [Fact]
        public void Have_the_same_middle_as_the_outline_at_any_spacing() =>
            Gen.Select(SampleOutlines.Any, Gen.Double[0.008, 0.03]).Sample(
                (plate, spacing) =>
                {
                    // Slivers are given away to a neighbour whose place may stay: 5 % of a cell each.
                    Vector fine = Middle(plate.Cells(4e-3)), coarse = Middle(plate.Cells(spacing));
                    Close.Absolute(0.0, (fine - coarse).Length, 3e-4);
                },
                iter: 15);

        [Fact]
        public void Lie_in_the_sheet_and_look_forward() => SampleOutlines.Any.Sample(
            plate => Assert.All(plate.Cells(Spacing), cell =>
            {
                Assert.True(plate.Contains(cell.Centre));
                Assert.Equal(new Vector(1.0, 0.0, 0.0), cell.Normal);
                Assert.Equal(new Vector(0.0, 1.0, 0.0), cell.Across);
                Assert.True(cell.Area > 0.0);
            }),
            iter: 10);

        [Fact]
        public void Of_upright_rectangles_are_whole_and_exact() => SampleOutlines.UprightOnly.Sample(
            plate =>
            {
                IReadOnlyList<Cell> cells = plate.Cells(Spacing);
                Close.Relative(SampleOutlines.AreaWithin(plate.Boundary), cells.Sum(cell => cell.Area), 1e-9);
                Assert.All(cells, cell => Assert.True(cell.Area <= Spacing * Spacing * (1.0 + 1e-9) && plate.Contains(cell.Centre)));
            },
            iter: 20);

        [Fact]
        public void Of_a_plain_rectangle_are_those_of_the_rectangular_surface()
        {
            IReadOnlyList<Cell> expected = new RectangularSurface(0.3, 0.2).Cells(Spacing), actual = new FlatSurface(Plate).Cells(Spacing);
            Assert.Equal(expected.Count, actual.Count);
            for (int i = 0; i < expected.Count; i++)
            {
                Close.Absolute(0.0, (expected[i].Centre - actual[i].Centre).Length, 1e-12);
                Close.Relative(expected[i].Area, actual[i].Area, 1e-12);
            }
        }

        [Fact]
        public void Of_a_disc_in_a_ring_opening_are_exact_pieces_of_rings()
        {
            FlatSurface target = new(
                new DiscShape(0.02, 0.01, 0.15), Piece.Removed(new DiscShape(0.02, 0.01, 0.1)), Piece.Added(new DiscShape(0.02, 0.01, 0.04)));
            IReadOnlyList<Cell> cells = target.Cells(5.7e-3);
            // derived: π(0.15² − 0.1² + 0.04²), and a second moment about the centre of π/2 (0.15⁴ − 0.1⁴ + 0.04⁴).
            Close.Relative(Math.PI * ((0.15 * 0.15) - (0.1 * 0.1) + (0.04 * 0.04)), cells.Sum(cell => cell.Area), 1e-12);
            double moment = cells.Sum(cell => cell.Area * Math.Pow((cell.Centre - new Vector(0.0, 0.02, 0.01)).Length, 2.0));
            double expected = 0.5 * Math.PI * (Math.Pow(0.15, 4.0) - Math.Pow(0.1, 4.0) + Math.Pow(0.04, 4.0));
            // 1e-3: the spread within a cell, a sixth of its area, is not in the moment.
            Close.Relative(expected, moment, 1e-3);
        }

        [Fact]
        public void Of_circles_in_a_plate_are_pieces_of_rings_within_and_a_raster_beyond()
        {
            FlatSurface plate = new(Plate, Piece.Removed(new DiscShape(0.02, 0.0, 0.03)), Piece.Removed(new RingShape(0.02, 0.0, 0.05, 0.07)));
            IReadOnlyList<Cell> cells = plate.Cells(Spacing);
            Assert.All(cells, cell => Assert.True(plate.Contains(cell.Centre)));
            double within = cells.Where(cell => (cell.Centre - new Vector(0.0, 0.02, 0.0)).Length < 0.06).Sum(cell => cell.Area);
            // derived: π(0.05² − 0.03²); 0.3 × 0.2 − π(0.07² − 0.05² + 0.03²).
            Close.Relative(Math.PI * 0.0016, within, 1e-12);
            Close.Relative(0.06 - (Math.PI * 0.0033), cells.Sum(cell => cell.Area), 1e-9);
        }

        [Fact]
        public void Of_a_disc_lie_on_circles_at_the_centres_of_area_of_their_sectors()
        {
            double[] radii = [.. new FlatSurface(new DiscShape(0.0, 0.0, 0.1)).Cells(Spacing).Select(cell => Math.Round(cell.Centre.Length, 9)).Distinct().Order()];
            // derived: 100 mm in steps of 10; a circle of 10 mm radius in 7 sectors. Handbooks: a sector's centre is at (2/3) r sin(α/2)/(α/2).
            Assert.Equal(10, radii.Length);
            Close.Absolute(2.0 / 3.0 * 0.01 * Math.Sin(Math.PI / 7.0) / (Math.PI / 7.0), radii[0], 1e-9);
        }

        [Fact]
        public void Of_a_disc_with_a_square_opening_leave_the_square_out() =>
            // derived: π 0.1² − 0.05²; whole circles have their true area.
            Close.Relative(
                (Math.PI * 0.01) - 0.0025,
                new FlatSurface(new DiscShape(0.0, 0.0, 0.1), Piece.Removed(new RectangleShape(0.0, 0.0, 0.05, 0.05))).Cells(Spacing).Sum(cell => cell.Area),
                1e-9);

        [Fact]
        public void Around_a_hole_within_one_cell_keep_their_middle()
        {
            FlatSurface plate = new(new RectangleShape(0.0, 0.0, 0.03, 0.03), Piece.Removed(new DiscShape(0.0, 0.0, 0.003)));
            IReadOnlyList<Cell> cells = plate.Cells(Spacing);
            Assert.All(cells, cell => Assert.True(plate.Contains(cell.Centre)));
            // derived: by symmetry.
            Close.Absolute(0.0, Middle(cells).Length, 1e-9);
        }

        [Fact]
        public void Of_a_thin_open_ring_lie_in_it_though_no_cell_is_full()
        {
            FlatSurface ring = new(new RingShape(0.0, 0.0, 0.05, 0.0502), Piece.Removed(new RectangleShape(0.05, 0.0, 0.01, 0.01)));
            IReadOnlyList<Cell> cells = ring.Cells(0.02);
            Assert.All(cells, cell => Assert.True(ring.Contains(cell.Centre) && cell.Area > 0.0));
            // 1e-3: the ring is 0.2 mm broad and its polygon is 0.005 mm off the arc.
            Close.Relative(SampleOutlines.AreaWithin(ring.Boundary), cells.Sum(cell => cell.Area), 1e-3);
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Reject_a_spacing_that_is_not_finite_and_positive(double spacing) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => new FlatSurface(Plate).Cells(spacing));

        private static Vector Middle(IReadOnlyList<Cell> cells)
        {
            Vector sum = cells.Aggregate(Vector.Zero, (moment, cell) => moment + (cell.Centre * cell.Area));
            return sum * (1.0 / cells.Sum(cell => cell.Area));
        }
    }

    public sealed class Loops
    {
        [Fact]
        public void Enclose_the_sheet_and_leave_out_the_openings()
        {
            FlatSurface plate = new(Plate, Piece.Removed(new DiscShape(0.0, 0.0, 0.05)), Piece.Removed(new RectangleShape(0.15, 0.0, 0.1, 0.01)));
            Assert.Equal(2, plate.Loops.Count);
            // derived: 0.3 × 0.2 less 0.05 × 0.01, and π 0.05².
            double[] areas = [.. plate.Loops.Select(Enclosed).OrderDescending()];
            Close.Relative(0.0595, areas[0], 1e-12);
            Close.Relative(Math.PI * 0.0025, areas[1], 1e-12);
        }

        private static double Enclosed(IReadOnlyList<Vector> loop) =>
            Math.Abs(loop.Select((point, i) => 0.5 * Vector.Cross(point, loop[(i + 1) % loop.Count]).X).Sum());
    }
}
