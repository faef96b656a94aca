using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Mirrorings;

public static class MirrorImagesTests
{
    private static readonly Gen<Mirroring> Any = Gen.Int[1, 3].Select(i => (Mirroring)i);

    private static readonly Gen<double> Parts = Gen.Double[-1.0, 1.0];

    private static readonly Gen<ComplexVector> Phasors = Gen.Select(Parts, Parts, Parts, Parts, Parts, Parts, (a, b, c, d, e, f) => new ComplexVector(new(a, b), new(c, d), new(e, f)));

    private static readonly Gen<Vector> Places = Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[0.01, 0.2], Gen.Double[0.01, 0.2], (x, y, z) => new Vector(x, y, z));

    // Maxwell's equations know no left and right: mirrored currents send the mirrored field, whose magnetic part is turned over once more.
    [Fact]
    public static void Mirrored_currents_send_the_mirrored_field() =>
        Gen.Select(Any, Places, Phasors, Phasors, Places).Sample(
            (mirroring, from, electric, magnetic, way) =>
            {
                Vector to = from + way;
                FieldSample here = Field(from, electric, magnetic, to);
                FieldSample there = Field(
                    MirrorImages.Of(mirroring, from), MirrorImages.OfElectric(mirroring, electric), MirrorImages.OfMagnetic(mirroring, magnetic), MirrorImages.Of(mirroring, to));
                double e = Math.Sqrt(here.Electric.SquaredMagnitude), h = Math.Sqrt(here.Magnetic.SquaredMagnitude);
                Close.Absolute(0.0, Math.Sqrt((there.Electric + (MirrorImages.OfElectric(mirroring, here.Electric) * -1.0)).SquaredMagnitude) / e, 1e-9);
                Close.Absolute(0.0, Math.Sqrt((there.Magnetic + (MirrorImages.OfMagnetic(mirroring, here.Magnetic) * -1.0)).SquaredMagnitude) / h, 1e-9);
            },
            iter: 200);

    [Fact]
    public static void Finds_the_image_of_every_place_and_none_where_one_is_missing() =>
        Gen.Select(Any, Places.Array[1, 40]).Sample(
            (mirroring, half) =>
            {
                Vector[] places = [.. half, .. half.Select(place => MirrorImages.Of(mirroring, place) + new Vector(0.0, 3e-7, -3e-7))];
                int[]? images = MirrorImages.Among(places, mirroring, 1e-6);
                Assert.NotNull(images);
                Assert.All(Enumerable.Range(0, places.Length), i => Assert.InRange((places[images[i]] - MirrorImages.Of(mirroring, places[i])).Length, 0.0, 1e-6));
                Assert.Null(MirrorImages.Among(places[1..], mirroring, 1e-6));
            },
            iter: 100);

    [Fact]
    public static void What_lies_on_the_line_between_is_its_own_image() =>
        Assert.Equal([0, 1], MirrorImages.Among([new Vector(0.0, 0.0, 0.1), new Vector(0.0, 0.0, 0.2)], Mirroring.Sideways, 1e-9)!);

    private static FieldSample Field(Vector from, ComplexVector electric, ComplexVector magnetic, Vector to)
    {
        FieldSample[] field = new FieldSample[1];
        RadiatedField.Evaluate(new CurrentSamples([from], [electric], [magnetic * 377.0]), 220.0, [to], field);
        return field[0];
    }
}
