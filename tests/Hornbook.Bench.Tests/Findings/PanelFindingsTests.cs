using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class PanelFindingsTests
{
    private const double QuarterTurn = Math.PI / 2.0;

    [Fact]
    public void A_panel_with_room_on_all_sides_has_no_finding() => Assert.Empty(Of(Plate("plate", 0.7, 0.0, 0.3)));

    [Fact]
    public void A_panel_that_reaches_into_the_table_is_raised()
    {
        Finding finding = Assert.Single(Of(Plate("plate", 0.7, 0.0, 0.09)));

        // derived: half of 20 cm below 9 cm is −1 cm
        Assert.Equal("panel-too-low", finding.Id);
        Assert.Equal("The panel 'plate' reaches 1 cm below the table top.", finding.Wrong);
        Assert.Equal(("panels.plate.z", "10 cm"), (finding.Mend!.Key, finding.Mend.NewText));
    }

    [Fact]
    public void A_panel_that_lies_flat_on_the_table_is_not_too_low() => Assert.Empty(Of(Plate("plate", 0.7, 0.0, 0.0) with { Pose = new Pose(new Vector(0.75, 0.0, 0.0), tilt: QuarterTurn) }));

    [Fact]
    public void A_panel_beside_the_table_is_brought_back()
    {
        Finding finding = Assert.Single(Of(Plate("plate", 0.7, -0.5, 0.3)));

        // derived: the table ends at y = −45 cm
        Assert.Equal("panel-off-table", finding.Id);
        Assert.Equal(("panels.plate.y", "-45 cm"), (finding.Mend!.Key, finding.Mend.NewText));
    }

    [Theory]
    [InlineData(0.312, true)]
    [InlineData(0.330, false)]
    [InlineData(1.190, true)]
    [InlineData(1.170, false)]
    public void A_panel_nearer_to_a_mouth_than_half_a_wavelength_is_said(double x, bool isNear)
    {
        // derived: half a wavelength at 10.525 GHz is 14.2 mm; the mouths stand at 0.3 m and 1.2 m
        Assert.Equal(isNear, Of(Plate("plate", x, 0.0, 0.3)).Any(finding => finding.Id == "panel-at-mouth"));
    }

    [Fact]
    public void A_panel_that_lies_aside_has_no_finding() => Assert.Empty(Of(Plate("plate", 0.3, 0.0, -1.0) with { Stands = false }));

    [Fact]
    public void Panels_that_cut_through_each_other_are_said()
    {
        BenchPanel across = Plate("across", 0.7, 0.0, 0.3), along = across with { Name = "along", Pose = across.Pose with { Turn = QuarterTurn } };

        Finding finding = Assert.Single(Of(across, along));
        Assert.Equal("panels-cross", finding.Id);
        Assert.Equal(("panels.along.aside", "true"), (finding.Mend!.Key, finding.Mend.NewText));
    }

    [Fact]
    public void Panels_close_together_but_side_by_side_are_not()
    {
        BenchPanel front = Plate("front", 0.7, 0.0, 0.3);

        Assert.Empty(Of(front, Plate("behind", 0.704, 0.0, 0.3)));
        Assert.Empty(Of(front, Plate("beside", 0.7, 0.301, 0.3)));
        Assert.Empty(Of(front, Plate("aslant", 0.75, 0.0, 0.3) with { Pose = new Pose(new Vector(0.85, 0.0, 0.3), turn: Math.PI / 4.0) }));
    }

    [Fact]
    public void A_rod_through_a_hole_cuts_nothing_and_through_the_sheet_it_does()
    {
        BenchPanel holed = Plate("holed", 0.7, 0.0, 0.3) with { Panel = new Panel(new FlatSurface(new RectangleShape(0.0, 0.0, 0.3, 0.2), Piece.Removed(new DiscShape(0.0, 0.0, 0.05))), new Metal()) };
        BenchPanel rod = new("rod", new Panel(new RectangularSurface(0.2, 0.02), new Metal()), new Pose(new Vector(0.7, 0.0, 0.3), turn: QuarterTurn), Stands: true);

        Assert.Empty(Of(holed, rod));
        Assert.Single(Of(holed, rod with { Pose = rod.Pose with { Position = new Vector(0.7, 0.1, 0.3) } }));
    }

    [Fact]
    public void Its_mends_mend()
    {
        BenchFile bench = BenchFile.Read(Repository.At("examples", "panels-bench.toml")).Edit(
            BenchChange.ToTruth("panels.plate.aside", false), BenchChange.ToText("panels.plate.z", "10 cm"));
        Mend mend = Assert.Single(Of(bench)).Mend!;

        Assert.Empty(Of(bench.Edit(BenchChange.ToText(mend.Key!, mend.NewText!))));
    }

    private static Finding[] Of(BenchFile bench) => [.. PanelFindings.Of(bench.Plan!)];

    private static Finding[] Of(params BenchPanel[] panels) => [.. PanelFindings.Of(GoodBench.Plan with { Panels = panels })];

    private static BenchPanel Plate(string name, double x, double y, double z) =>
        new(name, new Panel(new RectangularSurface(0.3, 0.2), new Metal()), new Pose(new Vector(x, y, z)), Stands: true);
}
