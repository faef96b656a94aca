using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas;

public sealed class AntennaTests
{
    [Fact]
    public void Its_currents_radiate_one_watt() =>
        Gen.Select(SampleAntennas.Horns, SampleAntennas.Frequencies).Sample(
            (horn, frequency) =>
            {
                Antenna antenna = Antenna.At(horn, frequency);
                // Derived: the norm itself, by a sphere rule finer than the one that set it.
                SphereQuadrature sphere = SphereQuadrature.ForRadius(40.0);
                double power = 0.0;
                for (int i = 0; i < sphere.Weights.Length; i++)
                {
                    power += sphere.Weights[i] * FarField.Intensity(antenna.Currents, antenna.Wavenumber, sphere.Directions[i]);
                }

                Close.Relative(1.0, power, 1e-9);
            },
            iter: 5);

    [Fact]
    public void An_open_WR_90_end_has_about_6_8_dB_of_gain_at_10_5_GHz()
    {
        // Common practice, no source.
        Close.Absolute(6.8, Decibels.FromRatio(Antenna.At(SampleAntennas.OpenWr90, 10.5e9).Gain), 0.2);
    }

    [Theory]
    // Kanda & Orr 1987 (also IEEE Std 1309), G = 21.6 f a with f in GHz and a in m, from memory; good to 0.7 dB on a real guide.
    [InlineData(8.2e9, 6.07)]
    [InlineData(10.0e9, 6.94)]
    [InlineData(12.4e9, 7.87)]
    public void An_open_end_follows_the_empirical_gain_over_the_band(double frequency, double publishedDb) =>
        Close.Absolute(publishedDb, Decibels.FromRatio(Antenna.At(SampleAntennas.OpenWr90, frequency).Gain), 0.7);

    [Fact]
    public void The_mouth_norm_of_an_open_end_is_one_to_two_dB_lower()
    {
        // Selvan & Das 1997 (first page): the classical aperture gain is 1 to 2 dB low.
        Antenna antenna = Antenna.At(SampleAntennas.OpenWr90, 10e9);
        Assert.InRange(Decibels.FromRatio(antenna.Directivity / antenna.MouthNormDirectivity), 1.0, 2.2);
    }

    [Fact]
    public void An_open_end_reflects_about_a_quarter_of_the_wave()
    {
        // A full-wave computation of WR-90 with 1.27 mm walls gives 0.27 at 10.5 GHz; our flanged one-mode estimate is a little lower.
        Close.Absolute(0.27, Antenna.At(SampleAntennas.OpenWr90, 10.5e9).Reflection, 0.04);
    }

    [Fact]
    public void A_mouth_of_32_guide_areas_gives_about_16_6_dB()
    {
        // Common practice, no source.
        Antenna antenna = Antenna.At(SampleAntennas.TableHorn, 10.5e9);
        Close.Absolute(32.0, SampleAntennas.TableHorn.MouthWidth * SampleAntennas.TableHorn.MouthHeight / (22.86e-3 * 10.16e-3), 0.1);
        Close.Absolute(16.6, Decibels.FromRatio(antenna.Gain), 0.1);
    }

    [Fact]
    public void Its_far_zone_begins_at_about_60_cm()
    {
        // Common practice, no source.
        Close.Absolute(0.60, Antenna.At(SampleAntennas.TableHorn, 10.5e9).FarDistance, 0.03);
    }

    [Fact]
    public void The_optimum_horn_has_the_gain_of_its_published_design()
    {
        // Stutzman & Thiele, horn design example: 21.75 dB wanted at 8.75 GHz, mouth norm (from memory); the exact path costs 0.05 dB.
        Close.Absolute(21.75, Decibels.FromRatio(Antenna.At(SampleAntennas.OptimumHorn, 8.75e9).MouthNormDirectivity), 0.1);
    }

    [Fact]
    public void Its_aperture_efficiency_is_that_of_the_flare_whatever_its_walls_are_made_of()
    {
        // Closed form: s = 1/4 and t = 3/8 have 0.5144 (derived; Stutzman & Thiele: 0.51, from memory), mouth norm; exact paths and the
        // radiated norm raise it by 0.13 dB. Efficiency is of the directivity: what walls take is no matter of the mouth.
        Antenna brass = Antenna.At(SampleAntennas.OptimumHorn, 8.75e9);
        Close.Relative(0.5144, brass.ApertureEfficiency, 0.035);
        Horn lossy = new(SampleAntennas.Wr90, 186.1e-3, 147.5e-3, 295.6e-3, new Conductor("carbon", 1e4));
        Close.Relative(brass.ApertureEfficiency, Antenna.At(lossy, 8.75e9).ApertureEfficiency, 1e-9);
        Assert.True(Antenna.At(lossy, 8.75e9).OhmicEfficiency < 0.97);
    }

    [Fact]
    public void Exact_and_quadratic_path_agree_for_a_gentle_flare()
    {
        // Jull 1970 and the comparison of exact and quadratic phase: equal within 0.01 dB for flares with s and t below 0.2.
        // Closed form for s = t = 0.1: R_E = −0.1528 dB, R_H = −0.0733 dB (derived from the Fresnel integrals), G0 = 32AB/πλ².
        double wavelength = 0.03, width = 10 * wavelength, height = 10 * wavelength;
        double radiusH = width * width / (8 * wavelength * 0.1), radiusE = height * height / (8 * wavelength * 0.1);
        // A guide so small against the mouth that both flares begin nearly at the apex, in one plane.
        double length = radiusH * (1 - (SampleAntennas.Wr90.Width / width));
        double heightOfGuide = height * (1 - (length / radiusE));
        Horn horn = new(new RectangularGuide(SampleAntennas.Wr90.Width, heightOfGuide), width, height, length, Conductor.Brass);
        double expected = Decibels.FromRatio(32 * width * height / (Math.PI * wavelength * wavelength)) - 0.1528 - 0.0733;
        Close.Absolute(expected, Decibels.FromRatio(Antenna.At(horn, Constants.SpeedOfLight / wavelength).MouthNormDirectivity), 0.01);
    }

    [Fact]
    public void The_norms_of_a_horn_differ_by_a_tenth_of_a_decibel()
    {
        // The full-wave comparison behind the radiated norm: 0.1 to 0.2 dB for horns.
        Antenna antenna = Antenna.At(SampleAntennas.TableHorn, 10.5e9);
        Assert.InRange(Decibels.FromRatio(antenna.Directivity / antenna.MouthNormDirectivity), 0.05, 0.2);
    }

    [Fact]
    public void A_straight_horn_loses_what_its_guide_loses()
    {
        // Derived: 0.1571 dB/m for brass WR-90 at 10.525 GHz, from the TE10 wall-loss formula [Pozar2012].
        Horn straight = new(SampleAntennas.Wr90, 22.86e-3, 10.16e-3, 1.0, Conductor.Brass);
        Close.Absolute(-0.1571, Decibels.FromRatio(Antenna.At(straight, 10.525e9).OhmicEfficiency), 5e-4);
    }

    [Fact]
    public void A_pyramid_reflects_less_than_an_E_plane_horn_of_the_same_height()
    {
        Horn sectoral = new(SampleAntennas.Wr90, 22.86e-3, 79e-3, 66e-3, Conductor.Brass);
        Assert.True(Antenna.At(SampleAntennas.TableHorn, 10.5e9).Reflection < Antenna.At(sectoral, 10.5e9).Reflection);
    }

    [Fact]
    public void A_measured_reflection_takes_the_place_of_the_estimate()
    {
        Antenna antenna = Antenna.At(SampleAntennas.OpenWr90 with { MeasuredReflection = 0.5 }, 10.5e9);
        Close.Relative(0.75, antenna.MismatchEfficiency, 1e-15);
    }

    [Theory]
    [InlineData(6.5e9)]
    [InlineData(0.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_frequency_that_the_guide_does_not_carry_is_refused(double frequency)
    {
        ArgumentOutOfRangeException refusal =
            Assert.Throws<ArgumentOutOfRangeException>(() => Antenna.At(SampleAntennas.OpenWr90, frequency));
        Assert.Contains("the guide carries a wave only above its cut-off, 6.55714E+09 Hz", refusal.Message, StringComparison.Ordinal);
    }
}
