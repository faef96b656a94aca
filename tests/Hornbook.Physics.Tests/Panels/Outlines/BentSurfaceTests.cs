using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class BentSurfaceTests
{
    private const double Spacing = 0.01;
    private const double Width = 0.3;
    private const double Height = 0.2;

    private static readonly Gen<double> Radii = Gen.Double[0.2, 3.0];
    private static readonly Gen<(BendAxis Axis, SheetFace Face)> Ways = Gen.Select(Gen.Enum<BendAxis>(), Gen.Enum<SheetFace>());

    [Fact]
    public void Its_size_is_that_of_the_chord() => Gen.Select(Radii, Ways).Sample((radius, way) =>
    {
        BentSurface bent = new(new RectangularSurface(Width, Height), radius, way.Axis, way.Face);
        // The chord of an arc b, 2R sin(b/2R).
        Close.Relative(way.Axis == BendAxis.Z ? Chord(Width, radius) : Width, bent.Width, 1e-12);
        Close.Relative(way.Axis == BendAxis.Y ? Chord(Height, radius) : Height, bent.Height, 1e-12);
        Assert.False(bent.IsFlat);
    });

    [Fact]
    public void Its_area_is_that_of_the_blank_and_its_shadow_that_of_the_chord() => Gen.Select(Radii, Ways).Sample((radius, way) =>
    {
        IReadOnlyList<Cell> cells = new BentSurface(new RectangularSurface(Width, Height), radius, way.Axis, way.Face).Cells(Spacing);
        Close.Relative(Width * Height, cells.Sum(cell => cell.Area), 1e-12);
        double shadow = way.Axis == BendAxis.Z ? Chord(Width, radius) * Height : Width * Chord(Height, radius);
        // The middle of an arc of spacing/R stands for its mean cosine: (0.01/0.2)²/24.
        Close.Relative(shadow, cells.Sum(cell => cell.Area * cell.Normal.X), 1.1e-4);
    });

    [Fact]
    public void Its_cells_lie_on_the_cylinder_and_their_normals_meet_its_axis() => Gen.Select(Radii, Ways).Sample((radius, way) =>
    {
        IReadOnlyList<Cell> cells = new BentSurface(new RectangularSurface(Width, Height), radius, way.Axis, way.Face).Cells(Spacing);
        double toAxis = way.Face == SheetFace.Front ? radius : -radius;
        SurfaceLaws.HaveRightFrames(cells);
        Assert.All(cells, cell =>
        {
            Vector axis = cell.Centre + (cell.Normal * toAxis);
            Close.Absolute(toAxis, axis.X, 1e-12);
            Close.Absolute(0.0, way.Axis == BendAxis.Z ? axis.Y : axis.Z, 1e-12);
            Vector along = Vector.Cross(cell.Normal, cell.Across);
            Vector straight = way.Axis == BendAxis.Z ? along : cell.Across;
            Close.Relative(1.0, way.Axis == BendAxis.Z ? straight.Z : straight.Y, 1e-12);
        });
    });

    [Fact]
    public void Its_feet_lie_along_the_sheet() => Gen.Select(Radii, Ways).Sample(
        (radius, way) =>
        {
            BentSurface bent = new(new RectangularSurface(Width, Height), radius, way.Axis, way.Face);
            SurfaceLaws.HaveRightFeet(bent, 0.03);
            foreach (Cell cell in bent.Cells(0.03))
            {
                double y = way.Axis == BendAxis.Z ? radius * Math.Asin(cell.Centre.Y / radius) : cell.Centre.Y;
                double z = way.Axis == BendAxis.Y ? radius * Math.Asin(cell.Centre.Z / radius) : cell.Centre.Z;
                double[] expected = [.. new[] { (0.5 * Width) - y, (0.5 * Width) + y, (0.5 * Height) - z, (0.5 * Height) + z }.Order()];
                double[] actual = [.. bent.Rims.Select(rim => rim.Foot(cell.Centre)!.Value.Distance).Order()];
                Assert.All(expected.Zip(actual), pair => Close.Absolute(pair.First, pair.Second, 1e-12));
            }
        },
        iter: 40);

    [Fact]
    public void A_hole_is_bent_with_its_plate()
    {
        FlatSurface plate = new(new RectangleShape(0.0, 0.0, Width, Height), Piece.Removed(new DiscShape(0.05, 0.0, 0.04)));
        BentSurface bent = new(plate, 0.25, BendAxis.Z, SheetFace.Front);
        SurfaceLaws.HaveRightFeet(bent, 0.02);
        Close.Relative(plate.Cells(Spacing).Sum(cell => cell.Area), bent.Cells(Spacing).Sum(cell => cell.Area), 1e-12);
        // derived: every point of the outline lies on the cylinder of 250 mm about (250 mm, 0).
        Assert.All(bent.Loops.SelectMany(loop => loop), point => Close.Relative(0.25, Math.Sqrt(Math.Pow(point.X - 0.25, 2.0) + (point.Y * point.Y)), 1e-12));
    }

    [Fact]
    public void Rejects_a_radius_that_bends_it_by_more_than_a_quarter_turn()
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
            () => new BentSurface(new RectangularSurface(Math.PI, 0.2), 0.9, BendAxis.Z, SheetFace.Front));
        // derived: half of π m is a quarter turn of 1 m.
        Assert.StartsWith("radius = 0.9; must be at least 1 m", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rejects_what_is_bent_already()
    {
        BentSurface bent = new(new RectangularSurface(0.1, 0.1), 1.0, BendAxis.Z, SheetFace.Front);
        Assert.StartsWith("blank: it is bent already", Assert.Throws<ArgumentException>(
            () => new BentSurface(bent, 1.0, BendAxis.Y, SheetFace.Front)).Message, StringComparison.Ordinal);
    }

    private static double Chord(double arc, double radius) => 2.0 * radius * Math.Sin(0.5 * arc / radius);
}
