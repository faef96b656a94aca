using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Exchange;

public sealed class CoarsePanelTests
{
    private static readonly Pose Somewhere = new(new Vector(0.4, -0.1, 0.2), turn: 0.3, tilt: 0.2);

    public static TheoryData<string, Panel> Panels => new()
    {
        { "plate", new Panel(new RectangularSurface(0.2, 0.15), new Metal()) },
        { "grid", new Panel(new RectangularSurface(0.15, 0.15), new StripGrid(5e-3, 2.5e-3)) },
        { "plate with a hole", new Panel(new FlatSurface(new RectangleShape(0.0, 0.0, 0.2, 0.2), Piece.Removed(new DiscShape(0.03, 0.02, 0.04))), new Metal()) },
        { "dish", new Panel(new DishSurface(0.3, 0.12), new Metal()) },
    };

    [Theory]
    [MemberData(nameof(Panels))]
    public void On_the_way_down_no_moment_is_lost_and_an_even_density_comes_up_again_as_it_was(string name, Panel panel)
    {
        PosedPanel posed = new(PreparedPanel.At(panel, PanelBenches.Frequency), Somewhere);
        CoarsePanel coarse = Assert.IsType<CoarsePanel>(posed.Panel.Coarse);
        Assert.InRange(coarse.Panel.Cells.Length, 1, posed.Panel.Cells.Length / 1.5);
        Body fine = new PanelInPlace(posed, default).Cells, large = new PanelInPlace(posed with { Panel = coarse.Panel }, default).Cells;

        Complex phase = Complex.FromPolarCoordinates(2.0, 0.7);
        ComplexVector density = new(phase, phase * 0.5, -phase);
        CurrentSamples even = CurrentSamples.Keeping(
            fine.Points, Array.ConvertAll(posed.Panel.Cells, cell => density * cell.Area), Array.ConvertAll(posed.Panel.Cells, cell => density * (3.0 * cell.Area)));
        CurrentSamples down = coarse.Down(even, large);
        Assert.True(Apart(Sum(even.Electric), Sum(down.Electric)) < 1e-12, name);
        Assert.True(Apart(Sum(even.Magnetic), Sum(down.Magnetic)) < 1e-12, name);

        CurrentSamples onLarge = CurrentSamples.Keeping(
            large.Points, Array.ConvertAll(coarse.Panel.Cells, cell => density * cell.Area), Array.ConvertAll(coarse.Panel.Cells, cell => density * (3.0 * cell.Area)));
        CurrentSamples up = coarse.Up(onLarge, fine);
        Close.Absolute(0.0, Math.Sqrt(up.Plus(even, -1.0).Squared() / even.Squared()), 1e-12);
    }

    [Fact]
    public void What_has_large_cells_already_has_no_larger_ones() =>
        Assert.Null(PreparedPanel.At(new Panel(new RectangularSurface(0.2, 0.2), new Metal()), PanelBenches.Frequency, 0.6).Coarse);

    private static double Apart(ComplexVector a, ComplexVector b) => Math.Sqrt((b + (a * -1.0)).SquaredMagnitude / a.SquaredMagnitude);

    private static ComplexVector Sum(ReadOnlySpan<ComplexVector> moments)
    {
        ComplexVector sum = default;
        foreach (ComplexVector moment in moments)
        {
            sum += moment;
        }

        return sum;
    }
}
