using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public sealed class EdgeLinksTests
{
    private const double Wavelength = 0.03;

    [Fact]
    public void Every_cell_of_a_rectangle_carries_the_currents_of_its_four_sides_and_shares_feet_with_its_row()
    {
        RectangularSurface sheet = new(0.1, 0.06);
        IReadOnlyList<Cell> cells = sheet.Cells(0.005);
        EdgeLinks links = EdgeLinks.Of(cells, sheet.Rims, Wavelength);
        // 20 by 12 cells: derived, four links each and feet on two sides of 20 and two of 12 cells.
        Assert.Equal(4 * 240, links.Links.Length);
        Assert.Equal(2 * (20 + 12), links.Feet.Length);
        Assert.All(links.Links, link => Assert.Equal(1.0, link.Spreading, 1e-9));
        Assert.All(links.Links, link => Assert.Equal(0.0, link.Ahead, 1e-12));
    }

    [Fact]
    public void Knows_the_breadth_of_cells_that_are_not_square()
    {
        // Derived: 19 mm in 4 cells of 4.75 mm, 8 mm in 2 cells of 4 mm.
        RectangularSurface sheet = new(0.019, 0.008);
        EdgeLinks links = EdgeLinks.Of(sheet.Cells(0.005), sheet.Rims, Wavelength);
        foreach (EdgeLink link in links.Links)
        {
            bool isSide = Math.Abs(links.Feet[link.Foot].Inward.Y) > 0.5;
            Close.Relative(isSide ? 0.00475 : 0.004, link.Breadth, 1e-9);
        }
    }

    [Fact]
    public void A_rim_behind_a_slit_is_hidden()
    {
        // A bar 40 mm wide and, 10 mm beside it, another one of 20 mm.
        Rim[] rims = [new StraightRim(At(0.0, 1.0), At(0.0, 0.0)), new StraightRim(At(0.04, 0.0), At(0.04, 1.0)),
            new StraightRim(At(0.05, 1.0), At(0.05, 0.0)), new StraightRim(At(0.07, 0.0), At(0.07, 1.0))];
        Cell[] cells = [new Cell(At(0.06, 0.5), Vector.UnitX, Vector.UnitY, 2.5e-5)];
        EdgeLinks links = EdgeLinks.Of(cells, rims, Wavelength);
        // Derived: the cell is 10 mm from either side of its own bar.
        Assert.Equal(2, links.Links.Length);
        Assert.All(links.Links, link => Assert.Equal(0.01, link.Distance, 1e-12));
    }

    [Fact]
    public void Feet_close_to_each_other_are_one_and_know_how_far_ahead_each_cell_is()
    {
        Rim rim = new StraightRim(At(0.0, 1.0), At(0.0, 0.0));
        Cell[] cells = [.. Enumerable.Range(0, 40).Select(i => new Cell(At(0.01, 0.5 + (i * 1e-4)), Vector.UnitX, Vector.UnitY, 2.5e-5))];
        EdgeLinks links = EdgeLinks.Of(cells, [rim], Wavelength);
        // Derived: 4 mm of rim in stretches of λ/8 = 3.75 mm.
        Assert.InRange(links.Feet.Length, 1, 3);
        foreach (EdgeLink link in links.Links)
        {
            // Inward × front normal is y × x = −z.
            Close.Absolute(cells[link.Cell].Centre.Z, links.Feet[link.Foot].Place.Z - link.Ahead, 1e-12);
        }
    }

    [Theory]
    // Derived: a tube of rays from a circle of radius a is a/(a + x) of its breadth at the distance x outside, a/(a − x) inside.
    [InlineData(1.0)]
    [InlineData(-1.0)]
    public void A_curved_rim_spreads_or_gathers_its_wave(double outside)
    {
        const double Radius = 0.1, Distance = 0.02;
        Cell[] cells = [new Cell(At(Radius + (outside * Distance), 0.0), Vector.UnitX, Vector.UnitY, 2.5e-5)];
        EdgeLink link = EdgeLinks.Of(cells, [new Circle(Radius, outside)], Wavelength).Links[0];
        // The straight step beside the cell leaves so much.
        Close.Relative(Math.Sqrt(Radius / (Radius + (outside * Distance))), link.Spreading, 1e-4);
    }

    [Fact]
    public void At_the_centre_of_a_disc_the_wave_stays_finite()
    {
        Cell[] cells = [new Cell(At(1e-6, 0.0), Vector.UnitX, Vector.UnitY, 2.5e-5)];
        EdgeLink link = EdgeLinks.Of(cells, [new Circle(0.1, -1.0)], Wavelength).Links[0];
        // Derived from the limit a tenth of a wavelength before the focus: √(1 + 10 x/λ) with x = 0.1 m.
        Assert.InRange(link.Spreading, 1.0, Math.Sqrt(1.0 + (10.0 * 0.1 / Wavelength)));
    }

    private static Vector At(double y, double z) => new(0.0, y, z);

    /// <summary>A circle about the origin with the sheet outside (1) or inside (−1).</summary>
    private sealed class Circle(double radius, double outside) : Rim
    {
        public override double Length => 2.0 * Math.PI * radius;

        public override RimFoot? Foot(Vector point)
        {
            Vector radial = point.Unit;
            return new RimFoot(radial * radius, radial * outside, Vector.UnitX, outside * (point.Length - radius));
        }
    }
}
