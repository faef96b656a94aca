using CsCheck;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;
using static Hornbook.Physics.Tests.Panels.PanelBenches;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Exchange;

public static class MirrorImageTests
{
    private static readonly Mouth Source = new(LargeHorn, AtOrigin);

    // The method of images [Harrington1961], § 3-3: with the image, no electric field is left along an endless conductor in its plane, however the panel stands before it.
    [Fact]
    public static void Behind_metal_the_image_cancels_the_electric_field_along_the_mirror() =>
        Gen.Select(Gen.Double[-0.15, 0.15], Gen.Double[-0.15, 0.15], Gen.Double[0.03, 0.06], Gen.Int[0, 1]).Sample(
            (turn, tilt, gap, side) =>
            {
                Pose mirror = new(new Vector(0.4, 0.02, -0.01), 0.2, 0.1, 0.3), panel = new(mirror.ToBench(new Vector(side == 0 ? -gap : gap, 0.02, 0.01)), mirror.Turn + turn, mirror.Tilt + tilt);
                (PanelInPlace small, CurrentSamples own, CurrentSamples image) = Imaged(new Metal(), mirror, panel);
                (FieldSample[] from, FieldSample[] back) = (InPlane(own, mirror), InPlane(image, mirror));
                double largest = from.Max(field => Along(field, mirror).Max(Complex.Abs));
                Assert.True(small.IsFlat && largest > 0.0);
                foreach ((FieldSample there, FieldSample returned) in from.Zip(back))
                {
                    Assert.All(Along(there, mirror).Zip(Along(returned, mirror)), pair => Close.Absolute(0.0, (pair.First + pair.Second).Magnitude / largest, 1e-9));
                }
            },
            iter: 30);

    // derived: what a sheet that throws back alike whatever the polarisation returns is the electric field along it times its reflection, when waves come straight at it.
    [Fact]
    public static void In_a_half_mirror_the_image_is_weaker_by_what_the_mirror_throws_back()
    {
        Pose mirror = new(new Vector(0.4, 0.0, 0.0));
        ImpedanceSheet half = ImpedanceSheet.Mirror(0.5);
        (_, CurrentSamples own, CurrentSamples image) = Imaged(half, mirror, new Pose(new Vector(0.35, 0.0, 0.0)));
        Complex reflection = half.At(Frequency).Arriving(SheetFace.Back, 0.0, 0.0).Reflection.AlongAlong;
        FieldSample[] from = InPlane(own, mirror), back = InPlane(image, mirror);
        double largest = from.Max(field => Along(field, mirror).Max(Complex.Abs));
        Assert.All(
            from.Zip(back).SelectMany(pair => Along(pair.First, mirror).Zip(Along(pair.Second, mirror))),
            pair => Close.Absolute(0.0, (pair.Second - (reflection * pair.First)).Magnitude / largest, 1e-9));
    }

    [Theory]
    [InlineData(0.1, 0.0, 0.0, true)]
    [InlineData(0.1, 0.3, 0.0, true)]
    [InlineData(0.1, 0.35, 0.0, false)] // askew: it comes back 17 cm beside, and the panel is 15 cm wide
    [InlineData(0.35, 0.0, 0.0, false)] // far
    [InlineData(0.1, 0.0, 0.16, false)] // beside it
    [InlineData(0.0, 0.0, 0.0, false)] // in the same place
    [InlineData(0.01, 0.3, 0.0, false)] // across it
    public static void A_panel_has_an_image_in_one_that_it_faces(double gap, double turn, double aside, bool has)
    {
        PanelInPlace mirror = new(Square(new Metal(), 0.3, new Pose(new Vector(0.5, 0.0, 0.0)))), panel = new(Square(new Metal(), 0.15, new Pose(new Vector(0.5 - gap, aside, 0.0), turn)));
        Assert.Equal(has, MirrorImage.Of(panel, mirror, [], Source) is not null);
    }

    [Theory]
    [InlineData(0.05, 0.0, false)]
    [InlineData(0.15, 0.0, true)] // behind the panel
    [InlineData(0.05, 0.16, true)] // beside the mirror
    public static void It_has_none_where_another_stands_between(double before, double aside, bool has)
    {
        PanelInPlace At(double gap, double left, double side) => new(Square(new Metal(), side, new Pose(new Vector(0.5 - gap, left, 0.0))));
        Assert.Equal(has, MirrorImage.Of(At(0.1, 0.0, 0.15), At(0.0, 0.0, 0.3), [At(before, aside, 0.1)], Source) is not null);
    }

    private static (PanelInPlace Panel, CurrentSamples Own, CurrentSamples Image) Imaged(ISheet sheet, Pose mirror, Pose pose)
    {
        PanelInPlace panel = new(Square(new StripGrid(5e-3, 2.5e-3), 0.1, pose));
        Vector[] places = panel.Cells.Points;
        ComplexVector Flow(Vector place, double turn) => ComplexVector.Along(pose.Left, Complex.FromPolarCoordinates(1.0, 150.0 * place.Y)) + ComplexVector.Along(pose.Up, Complex.FromPolarCoordinates(turn, 90.0 * place.Z));
        CurrentSamples own = new(places, [.. places.Select(place => Flow(place, 0.7))], [.. places.Select(place => Flow(place, -0.4) * Constants.VacuumImpedance)]);
        return (panel, own, MirrorImage.Of(panel, new PanelInPlace(Square(sheet, 0.3, mirror)), [], Source)!.Image(own));
    }

    private static FieldSample[] InPlane(CurrentSamples currents, Pose mirror)
    {
        Vector[] places = [.. Enumerable.Range(0, 5).Select(i => mirror.ToBench(new Vector(0.0, -0.1 + (0.05 * i), 0.03 * i)))];
        FieldSample[] fields = new FieldSample[places.Length];
        RadiatedField.Evaluate(currents, FreeSpace.Wavenumber(Frequency), places, fields);
        return fields;
    }

    private static Complex[] Along(FieldSample field, Pose mirror) => [field.Electric.Component(mirror.Left), field.Electric.Component(mirror.Up)];
}
