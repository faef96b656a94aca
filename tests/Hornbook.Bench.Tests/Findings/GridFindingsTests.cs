using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class GridFindingsTests
{
    [Fact]
    public void A_fine_grid_has_no_finding() => Assert.Empty(Of(5e-3));

    [Fact]
    public void A_grid_of_more_than_half_a_wavelength_is_noted_with_the_angle()
    {
        Finding finding = Assert.Single(Of(0.020));

        // derived: λ = 28.484 mm at 10.525 GHz, asin(28.484/20 − 1) = 25.1°; from there on the grid itself says so
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("The strips of 'grid' are 2 cm apart, so that waves are thrown into further directions from 25.1° off its normal on.", finding.Wrong);
        Assert.False(new StripGrid(0.020, 0.010).Scatters(10.525e9, Math.Sin(25.0 * GoodBench.Degree), 0.0));
        Assert.True(new StripGrid(0.020, 0.010).Scatters(10.525e9, Math.Sin(25.2 * GoodBench.Degree), 0.0));
    }

    [Fact]
    public void A_grid_of_more_than_a_wavelength_weakens_the_show_however_its_strips_lie()
    {
        Assert.Equal(Severity.Weakens, Assert.Single(Of(0.030)).Severity);
        Assert.Equal(Severity.Weakens, Assert.Single(Of(new TurnedSheet(new StripGrid(0.030, 0.015), 1.0))).Severity);
    }

    [Fact]
    public void Strips_on_a_board_and_wires_scatter_as_free_strips_do()
    {
        LayeredSheet board = new(new Layer(Dielectrics.Find("FR-4")!, 1.6e-3));
        Finding etched = Assert.Single(Of(new BoardedStripGrid(new StripGrid(0.020, 0.010), board))), wires = Assert.Single(Of(new WireGrid(0.020, 0.002)));

        Finding free = Assert.Single(Of(0.020));
        Assert.Equal((free.Wrong, free.Mend!.Move), (etched.Wrong, etched.Mend!.Move));
        Assert.StartsWith("The wires of 'grid' are 2 cm apart,", wires.Wrong, StringComparison.Ordinal);
        Assert.Equal(("panels.grid.wire_diameter", "1.4 mm"), (Assert.Single(wires.Mend!.Also).Key, Assert.Single(wires.Mend.Also).NewText));
        Assert.Empty(Of(new WireGrid(5e-3, 0.5e-3)));
    }

    private static Finding[] Of(double period) => Of(new StripGrid(period, 0.5 * period));

    private static Finding[] Of(ISheet sheet) => [.. GridFindings.Of(GoodBench.Plan with
    {
        Panels = [new BenchPanel("grid", new Panel(new RectangularSurface(0.15, 0.15), sheet), new Pose(new Vector(0.7, 0.0, 0.3)), Stands: true)],
    })];
}
