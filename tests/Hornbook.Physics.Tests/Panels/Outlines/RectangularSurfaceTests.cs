using System.Numerics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class RectangularSurfaceTests
{
    private const double Wavelength = 0.03;
    private const double Spacing = Wavelength / 4.5;

    [Theory]
    [InlineData(0.3, 0.2)]
    [InlineData(0.02, 0.3)] // too narrow to correct one way
    [InlineData(0.001, 0.001)]
    public void Cells_for_smooth_currents_are_the_same_ones_with_the_same_area_in_all(double width, double height)
    {
        RectangularSurface surface = new(width, height);
        IReadOnlyList<Cell> cells = surface.SmoothCells(Spacing);
        Assert.Equal(surface.Cells(Spacing).Select(cell => cell.Centre), cells.Select(cell => cell.Centre));
        Close.Relative(width * height, cells.Sum(cell => cell.Area), 1e-12);
        Assert.All(cells, cell => Assert.InRange(cell.Area, 0.9 * width * height / cells.Count, 1.1 * width * height / cells.Count));
    }

    [Fact]
    public void A_wave_over_the_sheet_is_summed_more_truly_by_them_than_by_even_cells()
    {
        // derived: the integral of e^{j(ay + bz)} over a rectangle is sin(aw/2)/(a/2) · sin(bh/2)/(b/2).
        RectangularSurface surface = new(0.21, 0.17);
        double k = 2.0 * Math.PI / Wavelength;
        (double even, double corrected) = (0.0, 0.0);
        double[] slopes = [.. Enumerable.Range(-10, 21).Select(i => 0.04 * i)];
        IReadOnlyList<Cell> cells = surface.Cells(Spacing), smooth = surface.SmoothCells(Spacing);
        foreach ((double a, double b) in slopes.SelectMany(a => slopes.Select(b => (k * a, k * b))))
        {
            double exact = Side(a, 0.21) * Side(b, 0.17);
            even += Math.Pow((Sum(cells, a, b) - exact).Magnitude, 2);
            corrected += Math.Pow((Sum(smooth, a, b) - exact).Magnitude, 2);
        }

        // derived: at an end even cells of length h are off by (ah)²/24 of the wave there; with the slope taken from two samples, a share ah of that is left: 0.56 at the steepest.
        Assert.True(corrected < 0.3 * even, $"{Math.Sqrt(corrected / even):F3} of the error of even cells");
    }

    private static double Side(double slope, double length) => Math.Abs(slope) < 1e-9 ? length : 2.0 * Math.Sin(0.5 * slope * length) / slope;

    private static Complex Sum(IReadOnlyList<Cell> cells, double a, double b) =>
        cells.Aggregate(Complex.Zero, (sum, cell) => sum + Complex.FromPolarCoordinates(cell.Area, (a * cell.Centre.Y) + (b * cell.Centre.Z)));
}
