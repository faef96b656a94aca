using System.Numerics;
using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Links;
using Hornbook.Physics.Tests.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Links;

public sealed class LinkTests
{
    private static readonly Gen<Pose> Poses =
        from x in Gen.Double[-0.2, 0.2]
        from y in Gen.Double[-0.2, 0.2]
        from z in Gen.Double[-0.2, 0.2]
        from turn in Gen.Double[-Math.PI, Math.PI]
        from tilt in Gen.Double[-1.0, 1.0]
        from roll in Gen.Double[-Math.PI, Math.PI]
        select new Pose(new Vector(x, y, z), turn, tilt, roll);

    [Fact]
    public void Swapping_source_and_receiver_changes_nothing() =>
        Gen.Select(SampleAntennas.Horns, Poses, Poses, SampleAntennas.Frequencies).Sample(
            (horn, here, there, frequency) =>
            {
                Pose away = there with { Position = there.Position + new Vector(0.6, 0.0, 0.0) };
                Antenna a = Antenna.At(horn, frequency), b = Antenna.At(SampleAntennas.OpenWr90, frequency);
                Complex forth = Link.Amplitude(a, here, b, away), back = Link.Amplitude(b, away, a, here);
                // Lorentz reciprocity: exact but for rounding.
                Close.Absolute(0.0, (forth - back).Magnitude / forth.Magnitude, 1e-9);
            },
            iter: 20);

    [Fact]
    public void Far_away_the_link_is_that_of_Friis() =>
        Gen.Select(SampleAntennas.Horns, SampleAntennas.Horns, SampleAntennas.Frequencies).Sample(
            (horn, other, frequency) =>
            {
                Antenna a = Antenna.At(horn, frequency), b = Antenna.At(other, frequency);
                const double Distance = 300.0;
                double link = Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, new Pose(new Vector(Distance, 0.0, 0.0), Math.PI)));
                // Friis 1946: P_r/P_t = G_a G_b (λ/4πr)².
                double friis = a.RealisedGain * b.RealisedGain * Math.Pow(a.Wavelength / (4 * Math.PI * Distance), 2);
                Close.Relative(friis, Link.Friis(a, b, Distance), 1e-12);
                Close.Absolute(0.0, Decibels.FromRatio(link / friis), 0.01);
            },
            iter: 10);

    [Fact]
    public void Far_away_and_off_both_axes_it_is_Friis_with_the_patterns() =>
        Gen.Select(SampleAntennas.Horns, Gen.Double[-0.8, 0.8], Gen.Double[-0.8, 0.8]).Sample(
            (horn, offSource, offReceiver) =>
            {
                Antenna a = Antenna.At(horn, 10e9), b = Antenna.At(SampleAntennas.OpenWr90, 10e9);
                const double Distance = 30e3;
                double link = Squared(Link.Amplitude(
                    a, new Pose(Vector.Zero, offSource), b, new Pose(new Vector(Distance, 0.0, 0.0), Math.PI + offReceiver)));
                double spread = a.Wavelength / (4 * Math.PI * Distance);
                double friis = FarPattern.Towards(a, PatternPlane.Magnetic, offSource).CoPolar
                    * FarPattern.Towards(b, PatternPlane.Magnetic, offReceiver).CoPolar
                    * Link.Mismatch(a, b) * Link.Ohmic(a, b) * spread * spread;
                Close.Absolute(0.0, Decibels.FromRatio(link / friis), 0.01);
            },
            iter: 40);

    [Fact]
    public void Doubling_the_distance_in_the_far_zone_leaves_a_quarter()
    {
        // Common practice, no source.
        Antenna a = Antenna.At(SampleAntennas.TableHorn, 10.5e9), b = Antenna.At(SampleAntennas.OpenWr90, 10.5e9);
        double At(double distance) => Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, new Pose(new Vector(distance, 0.0, 0.0), Math.PI)));
        Close.Relative(0.25, At(20.0) / At(10.0), 0.01);
    }

    [Fact]
    public void A_receiver_rolled_by_90_degrees_hears_nothing()
    {
        // Common practice, no source: with perfect symmetry nothing at all.
        Antenna a = Antenna.At(SampleAntennas.TableHorn, 10.5e9), b = Antenna.At(SampleAntennas.OpenWr90, 10.5e9);
        Pose rolled = new(new Vector(0.8, 0.0, 0.0), Math.PI, 0.0, 0.5 * Math.PI);
        double open = Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, rolled with { Roll = 0.0 }));
        Assert.True(Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, rolled)) < 1e-20 * open);
    }

    [Fact]
    public void A_rolled_receiver_follows_the_square_of_the_cosine() =>
        Gen.Double[-Math.PI, Math.PI].Sample(
            roll =>
            {
                // Malus 1809; in the far zone the mouth sees one plane wave, here 0.8 m away it is off by under 0.1 dB of full scale.
                Antenna a = Antenna.At(SampleAntennas.TableHorn, 10.5e9), b = Antenna.At(SampleAntennas.OpenWr90, 10.5e9);
                Pose facing = new(new Vector(0.8, 0.0, 0.0), Math.PI);
                double ratio = Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, facing with { Roll = roll }))
                    / Squared(Link.Amplitude(a, new Pose(Vector.Zero), b, facing));
                Close.Absolute(Math.Pow(Math.Cos(roll), 2), ratio, 0.01);
            },
            iter: 20);

    [Theory]
    // Derived (double aperture integral with the quadratic kernel): loss of each of two identical facing horns.
    [InlineData(1.0108, -1.569, 0.06)]
    [InlineData(2.0217, -0.728, 0.03)]
    [InlineData(8.0867, -0.165, 0.01)]
    public void Two_facing_horns_lose_as_much_as_the_closed_form_says(double distance, double lossDb, double toleranceDb)
    {
        Antenna horn = Antenna.At(SampleAntennas.OptimumHorn, 8.75e9);
        double link = Squared(Link.Amplitude(horn, new Pose(Vector.Zero), horn, new Pose(new Vector(distance, 0.0, 0.0), Math.PI)));
        double friis = Math.Pow(horn.RealisedGain * horn.Wavelength / (4 * Math.PI * distance), 2);
        Close.Absolute(lossDb, 0.5 * Decibels.FromRatio(link / friis), toleranceDb);
    }

    [Fact]
    public void Two_mouths_in_one_place_are_refused()
    {
        Antenna a = Antenna.At(SampleAntennas.OpenWr90, 10e9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Link.Amplitude(a, new Pose(Vector.Zero), a, new Pose(Vector.Zero)));
    }

    private static double Squared(Complex a) => (a.Real * a.Real) + (a.Imaginary * a.Imaginary);
}
