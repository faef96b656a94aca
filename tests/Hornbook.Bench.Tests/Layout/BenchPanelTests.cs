using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Bench.Tests.Layout;

public sealed class BenchPanelTests
{
    private static readonly Pose Upright = new(new Vector(0.7, 0.0, 0.25));

    public sealed class What
    {
        [Fact]
        public void A_grid_says_its_strips_and_how_they_lie() => Assert.Equal(
            "strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm at 45° to its upright",
            Panel("strip grid", new RectangularSurface(0.15, 0.15), new TurnedSheet(new StripGrid(5e-3, 2.5e-3), Math.PI / 4.0)).What);

        [Fact]
        public void A_grid_on_a_board_says_what_carries_it_and_a_grid_of_wires_its_wires()
        {
            RectangularSurface square = new(0.15, 0.15);
            BoardedStripGrid etched = new(new StripGrid(5e-3, 2.5e-3), new LayeredSheet(Layer("FR-4", 1.6e-3)));

            Assert.Equal("strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm on 1.6 mm of FR-4", Panel("strip grid", square, etched).What);
            Assert.Equal(
                "strip grid, 15 cm × 15 cm, strips of 2.5 mm every 5 mm at 45° to its upright on 1.6 mm of FR-4",
                Panel("strip grid", square, new TurnedSheet(etched, Math.PI / 4.0)).What);
            Assert.Equal("wire grid, 15 cm × 15 cm, wires of 0.5 mm every 5 mm", Panel("wire grid", square, new WireGrid(5e-3, 0.5e-3)).What);
        }

        [Fact]
        public void Layers_are_said_one_by_one() => Assert.Equal(
            "layered sheet, 30 cm × 20 cm, 4 mm of glass, 1.2 cm of air and 4 mm of glass",
            Panel("layered sheet", new RectangularSurface(0.3, 0.2), new LayeredSheet(Layer("glass", 4e-3), Layer("air", 12e-3), Layer("glass", 4e-3))).What);

        [Fact]
        public void A_round_one_is_so_much_across() => Assert.Equal(
            "metal plate, 30 cm across", Panel("metal plate", new FlatSurface(new DiscShape(0.0, 0.0, 0.15)), new Metal()).What);

        [Fact]
        public void A_square_is_not_round_although_its_corners_lie_on_a_circle() => Assert.Equal(
            "metal plate, 30 cm × 30 cm", Panel("metal plate", new FlatSurface(new RectangleShape(0.0, 0.0, 0.3, 0.3)), new Metal()).What);

        [Fact]
        public void A_dish_is_so_much_across() => Assert.Equal("dish, 36 cm across", Panel("dish", new DishSurface(0.36, 0.12), new Metal()).What);

        [Fact]
        public void What_is_known_by_what_it_does_says_that()
        {
            RectangularSurface square = new(0.3, 0.3);

            Assert.Equal("half mirror, 30 cm × 30 cm, throws back 50 % of the power", Panel("half mirror", square, ImpedanceSheet.Mirror(0.5)).What);
            Assert.Equal("film, 30 cm × 30 cm, 377 Ω per square", Panel("film", square, new ImpedanceSheet(377.0)).What);
            Assert.Equal("absorber, 30 cm × 30 cm, throws back −20 dB, lets pass nothing", Panel("absorber", square, new Absorber(0.01, 0.0, 0.05)).What);
        }

        private static Layer Layer(string material, double thickness) => new(Dielectrics.Find(material)!, thickness);
    }

    public sealed class Where
    {
        [Fact]
        public void What_stands_has_a_place_and_only_the_moves_that_were_made() => Assert.Equal(
            "at x = 70 cm, y = 0 cm, z = 25 cm, turned 45°, rolled −90°",
            (Plate() with { Pose = Upright with { Turn = Math.PI / 4.0, Roll = -Math.PI / 2.0 } }).Where);

        [Fact]
        public void What_lies_aside_says_so() => Assert.Equal("lies aside", (Plate() with { Stands = false }).Where);

        private static BenchPanel Plate() => Panel("metal plate", new RectangularSurface(0.3, 0.3), new Metal());
    }

    private static BenchPanel Panel(string kind, PanelSurface surface, ISheet sheet) => new("thing", new Panel(surface, sheet), Upright, Stands: true) { Kind = kind };
}
