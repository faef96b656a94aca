using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange.Symmetries;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation.Mirrorings;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;

namespace Hornbook.Physics.Tests.Panels.Exchange.Symmetries;

public static class PanelSymmetryTests
{
    private static readonly Mirroring[] All = [Mirroring.Sideways, Mirroring.Upright, Mirroring.HalfTurn];

    private static PreparedPanel Prepared(PanelSurface surface, ISheet sheet) => PreparedPanel.At(new Panel(surface, sheet), Frequency);

    private static Mirroring[] Of(PanelSurface surface, ISheet sheet) => [.. All.Where(Prepared(surface, sheet).Symmetry.Has)];

    [Fact]
    public static void A_rectangle_of_anything_that_is_alike_in_all_directions_has_all()
    {
        Assert.Equal(All, Of(new RectangularSurface(0.15, 0.2), new Metal()));
        Assert.Equal(All, Of(new RectangularSurface(0.1, 0.1), ImpedanceSheet.Mirror(0.5)));
    }

    [Fact]
    public static void Strips_along_a_side_leave_it_all_and_slanted_ones_the_half_turn()
    {
        StripGrid grid = new(5e-3, 2.5e-3);
        Assert.Equal(All, Of(new RectangularSurface(0.1, 0.1), grid));
        Assert.Equal([Mirroring.HalfTurn], Of(new RectangularSurface(0.1, 0.1), new TurnedSheet(grid, 0.3)));
        Assert.Equal([Mirroring.HalfTurn], Of(new RectangularSurface(0.1, 0.1), new TurnedSheet(new BoardedStripGrid(grid, new LayeredSheet(new Layer(Dielectrics.Find("FR-4")!, 1e-3))), 0.25 * Math.PI)));
    }

    [Fact]
    public static void An_opening_beside_the_middle_leaves_what_maps_it_onto_itself()
    {
        RectangleShape plate = new(0.0, 0.0, 0.2, 0.2);
        Assert.Equal([Mirroring.Upright], Of(new FlatSurface(plate, Piece.Removed(new DiscShape(0.04, 0.0, 0.03))), new Metal()));
        Assert.Empty(Of(new FlatSurface(plate, Piece.Removed(new DiscShape(0.04, 0.02, 0.03))), new Metal()));
    }

    // Its cells lie in rings, some of them of an odd number.
    [Fact]
    public static void A_dish_has_the_plane_from_which_its_cells_are_counted() => Assert.Contains(Mirroring.Upright, Of(new DishSurface(0.2, 0.1), new Metal()));

    // Odd and even numbers of cells along a side; each cell once, worked out or as an image.
    [Theory]
    [InlineData(0.15, 0.2, 4)]
    [InlineData(0.143, 0.119, 4)]
    public static void One_part_of_four_and_its_images_are_all_of_it(double width, double height, int parts)
    {
        PreparedPanel panel = Prepared(new RectangularSurface(width, height), new Metal());
        PanelPart part = panel.Symmetry.Part(All);
        int[] covered = [.. part.Places, .. part.Rest.Select(image => image.Cell)];
        Assert.Equal(Enumerable.Range(0, panel.Cells.Length), covered.Order());
        Assert.InRange(part.Cells.Length, panel.Cells.Length / parts, 0.3 * panel.Cells.Length);
        foreach (CellImage image in part.Rest)
        {
            Vector expected = MirrorImages.Of(image.By, part.Cells[image.Of].Centre);
            Assert.InRange((panel.Cells[image.Cell].Centre - expected).Length, 0.0, 1e-9);
        }
    }

    [Fact]
    public static void Without_a_symmetry_the_part_is_the_whole()
    {
        PreparedPanel panel = Prepared(new RectangularSurface(0.1, 0.1), new Metal());
        PanelPart part = panel.Symmetry.Part([]);
        Assert.True(part.IsWhole);
        Assert.Equal(panel.Cells, part.Cells);
    }
}
