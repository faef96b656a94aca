using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class DishSurfaceTests
{
    private const double Spacing = 0.01;

    private static readonly Gen<(double Diameter, double FocalLength, double Hole)> Sizes =
        Gen.Select(Gen.Double[0.15, 0.6], Gen.Double[0.1, 0.6], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.02, 0.1]));

    [Fact]
    public void Its_area_is_that_of_the_paraboloid_and_its_shadow_that_of_the_disc() => Sizes.Sample(
        size =>
        {
            IReadOnlyList<Cell> cells = Of(size).Cells(Spacing);
            double f = size.FocalLength, r = 0.5 * size.Diameter, hole = 0.5 * size.Hole;
            // The closed form in textbooks of calculus, with the difference of the cubes: area (8πf²/3)[(1 + r²/4f²)^(3/2) − 1].
            Close.Relative(8.0 / 3.0 * Math.PI * f * f * (Cube(r, f) - Cube(hole, f)), cells.Sum(cell => cell.Area), 1e-10);
            // 1e-3: the normal in the middle of a cell stands for all of it.
            Close.Relative(Math.PI * ((r * r) - (hole * hole)), cells.Sum(cell => cell.Area * cell.Normal.X), 1e-3);
        },
        iter: 40);

    [Fact]
    public void It_sends_what_comes_along_its_axis_to_its_focus_by_ways_of_one_length() => Sizes.Sample(
        size =>
        {
            IReadOnlyList<Cell> cells = Of(size).Cells(Spacing);
            SurfaceLaws.HaveRightFrames(cells);
            Vector focus = new(size.FocalLength, 0.0, 0.0);
            Assert.All(cells, cell =>
            {
                // Law of reflection, and the definition of the parabola: as far from the focus as from the plane x = −f.
                Vector reflected = new Vector(-1.0, 0.0, 0.0) + (cell.Normal * (2.0 * cell.Normal.X));
                Vector toFocus = focus - cell.Centre;
                Close.Absolute(0.0, (reflected - toFocus.Unit).Length, 1e-12);
                Close.Relative(size.FocalLength + cell.Centre.X, toFocus.Length, 1e-12);
            });
        },
        iter: 40);

    [Fact]
    public void Across_is_own_y_laid_into_the_sheet() => Sizes.Sample(
        size => Assert.All(Of(size).Cells(Spacing), cell =>
        {
            Assert.True(cell.Across.Y > 0.0);
            // In the plane of own y and the normal.
            Close.Absolute(0.0, Vector.Dot(Vector.Cross(new Vector(0.0, 1.0, 0.0), cell.Normal), cell.Across), 1e-12);
        }),
        iter: 20);

    [Fact]
    public void Its_feet_lie_along_the_meridians() => Sizes.Sample(
        size =>
        {
            DishSurface dish = Of(size);
            SurfaceLaws.HaveRightFeet(dish, 0.04);
            Assert.Equal(size.Hole > 0.0 ? 2 : 1, dish.Rims.Count);
            foreach (Cell cell in dish.Cells(0.04))
            {
                RimFoot foot = Assert.NotNull(dish.Rims[0].Foot(cell.Centre));
                Close.Relative(0.5 * size.Diameter, Radius(foot.Place), 1e-12);
                Close.Absolute(0.0, Vector.Cross(foot.Place, cell.Centre).X, 1e-12);
                // The way in a thousand chords; they are shorter by less than a millionth.
                Close.Relative(Chords(Radius(cell.Centre), Radius(foot.Place), size.FocalLength), foot.Distance, 1e-6);
            }
        },
        iter: 20);

    [Fact]
    public void The_foot_at_the_hole_and_that_at_the_edge_share_the_whole_way()
    {
        DishSurface dish = new(0.4, 0.2, 0.05);
        double whole = Chords(0.025, 0.2, 0.2);
        Assert.All(dish.Cells(Spacing), cell =>
            // As above.
            Close.Relative(whole, dish.Rims.Sum(rim => rim.Foot(cell.Centre)!.Value.Distance), 1e-6));
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Rejects_a_hole_that_is_not_within_it(double hole) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new DishSurface(0.3, 0.2, hole));

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Rejects_sizes_that_are_not_finite_and_positive(double size)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new DishSurface(size, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DishSurface(0.3, size));
    }

    private static DishSurface Of((double Diameter, double FocalLength, double Hole) size) => new(size.Diameter, size.FocalLength, size.Hole);

    private static double Cube(double r, double f) => Math.Pow(1.0 + (r * r / (4.0 * f * f)), 1.5);

    private static double Radius(Vector point) => Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z));

    private static double Chords(double from, double to, double f)
    {
        const int Count = 1000;
        double step = (to - from) / Count;
        return Enumerable.Range(0, Count).Sum(i =>
        {
            double a = from + (i * step), b = a + step;
            double rise = ((b * b) - (a * a)) / (4.0 * f);
            return Math.Sqrt((step * step) + (rise * rise));
        });
    }
}
