using CsCheck;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Outlines;

public sealed class ZonePlateRingsTests
{
    private static readonly Gen<double> Wavelengths = Gen.Double[0.003, 0.12];
    private static readonly Gen<double> Distances = Gen.Double[0.1, 5.0];

    [Fact]
    public void The_way_over_a_circle_is_half_wavelengths_longer_than_the_straight_one() =>
        Gen.Select(Wavelengths, Distances, Distances, Gen.Int[1, 20]).Sample((wavelength, a, b, count) =>
        {
            IReadOnlyList<double> toFocus = ZonePlateRings.For(wavelength, b, count).Radii;
            IReadOnlyList<double> between = ZonePlateRings.Between(wavelength, a, b, count).Radii;
            for (int n = 1; n <= count; n++)
            {
                // The definition of a zone (Born and Wolf 1999).
                Close.Absolute(0.5 * n * wavelength, Math.Sqrt((b * b) + Squared(toFocus[n - 1])) - b, 1e-12);
                double way = Math.Sqrt((a * a) + Squared(between[n - 1])) + Math.Sqrt((b * b) + Squared(between[n - 1]));
                Close.Absolute(0.5 * n * wavelength, way - a - b, 1e-12);
            }
        });

    [Fact]
    public void The_first_circles_go_as_the_root_of_their_number()
    {
        IReadOnlyList<double> radii = ZonePlateRings.For(600e-9, 1.0, 4).Radii;
        // derived: √(nλf), √6e-7 = 0.774597 mm and twice that; n²λ²/4 adds 1.5e-7 n of itself.
        Close.Relative(0.774597e-3, radii[0], 1e-6);
        Close.Relative(2.0 * 0.774597e-3, radii[3], 1e-6);
    }

    [Fact]
    public void A_source_far_away_sends_a_plane_wave() => Gen.Select(Wavelengths, Distances).Sample((wavelength, f) =>
        // Its wave is bent by b/a = 5e-6 at most.
        Close.Relative(ZonePlateRings.For(wavelength, f, 5).Radii[4], ZonePlateRings.Between(wavelength, 1e6, f, 5).Radii[4], 1e-5));

    [Fact]
    public void Every_other_zone_is_cut_out()
    {
        ZonePlateRings rings = ZonePlateRings.For(0.0285, 0.3, 4);
        double[] areas = [.. rings.Radii.Select(r => Math.PI * r * r)];
        DiscShape disc = new(0.0, 0.0, 0.4);
        double whole = Math.PI * 0.16;
        // derived: zones 1 and 3, or 2 and 4, are missing in a disc that is larger than the last of them.
        Close.Relative(whole - areas[0] - areas[2] + areas[1], Area(rings.Cut(disc, isCentreOpen: true)), 1e-12);
        Close.Relative(whole - areas[1] + areas[0] - areas[3] + areas[2], Area(rings.Cut(disc, isCentreOpen: false)), 1e-12);
        Assert.Equal(4, rings.Cut(disc, isCentreOpen: true).Rims.Count);
        Assert.Equal(5, rings.Cut(disc, isCentreOpen: false).Rims.Count);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Rejects_fewer_zones_than_one(int count)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.For(0.03, 1.0, count));
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.Between(0.03, 1.0, 1.0, count));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Rejects_lengths_that_are_not_finite_and_positive(double length)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.For(length, 1.0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.For(0.03, length, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.Between(0.03, length, 1.0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ZonePlateRings.Between(0.03, 1.0, length, 1));
    }

    private static double Area(FlatSurface surface) => surface.Cells(0.01).Sum(cell => cell.Area);

    private static double Squared(double x) => x * x;
}
