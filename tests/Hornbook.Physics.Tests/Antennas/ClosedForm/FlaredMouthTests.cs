using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

public sealed class FlaredMouthTests
{
    private const double Wave = 1.0; // textbook examples are in wavelengths
    private const double None = double.PositiveInfinity;

    public sealed class Directivity
    {
        [Fact]
        public void Of_an_E_plane_sectoral_horn()
        {
            // C. A. Balanis, Antenna Theory, 3rd ed., § 13.2 examples: a = 0.5, b1 = 2.75, ρ1 = 6 wavelengths, edge phase 56.72°, half flare 12.9°.
            // The book prints 12.79 = 11.07 dB from rounded Fresnel integrals; exactly 12.830 = 11.082 dB.
            FlaredMouth mouth = new(0.5, 2.75, None, 6.0);
            Close.Absolute(56.72, mouth.LineE(Wave).PhaseParameter * 360.0, 0.005);
            Close.Absolute(12.9, Math.Atan(2.75 / 2.0 / 6.0) * 180.0 / Math.PI, 0.05);
            Close.Absolute(12.830, mouth.Directivity(Wave), 0.0005);
            Close.Absolute(11.082, Decibels.FromRatio(mouth.Directivity(Wave)), 0.0005);
            Close.Absolute(11.07, Decibels.FromRatio(mouth.Directivity(Wave)), 0.03);
        }

        [Fact]
        public void Of_a_pyramidal_horn()
        {
            // Balanis, Antenna Theory, 3rd ed., § 13.4: a1 = 5.5, b1 = 2.75, ρ1 = ρ2 = 6 wavelengths on a 0.5 by 0.25 guide; ρ_e = 6.1555, ρ_h = 6.6002,
            // p_e = p_h = 5.4545. The book prints 75.54 = 18.78 dB; exactly 76.345 = 18.828 dB.
            Horn horn = new(new RectangularGuide(0.5, 0.25), 5.5, 2.75, 6.0 / 1.1, Conductor.Brass);
            Close.Relative(6.0, horn.AxialRadiusE, 1e-12);
            Close.Relative(6.0, horn.AxialRadiusH, 1e-12);
            FlaredMouth slant = FlaredMouth.Of(horn, FlareRadius.Slant);
            Close.Absolute(6.1555, slant.RadiusE, 0.5e-4);
            Close.Absolute(6.6002, slant.RadiusH, 0.5e-4);
            double directivity = FlaredMouth.Of(horn).Directivity(Wave);
            Close.Absolute(76.345, directivity, 0.0005);
            Close.Absolute(18.828, Decibels.FromRatio(directivity), 0.0005);
            Close.Absolute(18.78, Decibels.FromRatio(directivity), 0.06);
        }

        [Fact]
        public void Moves_by_0_44_dB_between_axial_and_slant_radii()
        {
            // Derived for the horn above: 18.83 dB with the axial lengths, 19.27 dB with the slant ones.
            double slant = new FlaredMouth(5.5, 2.75, 6.6002, 6.1555).Directivity(Wave);
            Close.Absolute(19.27, Decibels.FromRatio(slant), 0.005);
        }

        [Theory]
        // Balanis, Antenna Theory, ch. 13, exercise: an E-plane horn whose wall of 10 wavelengths is a third of a wavelength longer than its axis;
        // the guide reflects 0.2. The answers are derived: with the exact difference of paths, and with the quadratic one.
        [InlineData(true, 29.67, 5.121, 17.22, 12.36)]
        [InlineData(false, 29.42, 5.079, 17.33, 12.39)]
        public void Of_a_horn_with_a_third_of_a_wave_of_lag(bool exactPath, double flareDeg, double height, double expected, double expectedDb)
        {
            const double Wall = 10.0, Lag = 1.0 / 3.0;

            // Exact: wall − axis = lag. Quadratic: (b1/2)²/(2 axis) = lag with axis² + (b1/2)² = wall², so axis = −lag + √(lag² + wall²).
            double axis = exactPath ? Wall - Lag : Math.Sqrt((Lag * Lag) + (Wall * Wall)) - Lag;
            double side = 2.0 * Math.Sqrt((Wall * Wall) - (axis * axis));
            Close.Absolute(flareDeg, 2.0 * Math.Acos(axis / Wall) * 180.0 / Math.PI, 0.005);
            Close.Absolute(height, side, 0.0005);
            double directivity = new FlaredMouth(0.5, side, None, axis).Directivity(Wave);
            Close.Absolute(expected, directivity, 0.005);
            Close.Absolute(expectedDb, Decibels.FromRatio(directivity), 0.01);
        }

        [Fact]
        public void Less_the_reflection_is_the_gain_of_that_horn()
        {
            // Same exercise: 12.18 dB after a reflection of 0.2.
            double axis = 10.0 - (1.0 / 3.0);
            double side = 2.0 * Math.Sqrt(100.0 - (axis * axis));
            double gain = new FlaredMouth(0.5, side, None, axis).Directivity(Wave) * (1.0 - (0.2 * 0.2));
            Close.Absolute(12.18, Decibels.FromRatio(gain), 0.01);
        }

        [Fact]
        public void Is_the_product_of_two_sectoral_horns()
        {
            // Balanis, Antenna Theory, ch. 13: D = (π λ²/32ab) D_E D_H.
            double pyramid = new FlaredMouth(5.5, 2.75, 6.0, 6.0).Directivity(Wave);
            double e = new FlaredMouth(0.5, 2.75, None, 6.0).Directivity(Wave), h = new FlaredMouth(5.5, 0.25, 6.0, None).Directivity(Wave);
            Close.Relative(Math.PI / (32.0 * 0.5 * 0.25) * e * h, pyramid, 1e-12);
        }

        [Fact]
        public void In_phase_is_that_of_the_cosine_mouth()
        {
            // (32/π) AB/λ² = 10.186 AB/λ², efficiency 8/π² = −0.912 dB (S. A. Schelkunoff, 1943).
            FlaredMouth mouth = new(3.0, 2.0, None, None);
            Close.Absolute(10.186 * 6.0, mouth.InPhaseDirectivity(Wave), 0.003);
            Close.Relative(mouth.InPhaseDirectivity(Wave), mouth.Directivity(Wave), 1e-13);
            Close.Absolute(-0.912, Decibels.FromRatio(mouth.ApertureEfficiency(Wave)), 0.0005);
        }
    }

    [Theory]
    [InlineData(0.03, 7.0, 5.0)]
    [InlineData(0.0125, 3.0, 9.0)]
    public void The_optimum_mouth_has_its_textbook_efficiency_at_any_size(double wavelength, double widthInWaves, double heightInWaves)
    {
        // s = 1/4, t = 3/8: 0.5144 derived; Balanis says 0.50, Stutzman and Thiele 0.51.
        double a = widthInWaves * wavelength, b = heightInWaves * wavelength;
        FlaredMouth mouth = new(a, b, a * a / (3.0 * wavelength), b * b / (2.0 * wavelength));
        Close.Absolute(0.5144, mouth.ApertureEfficiency(wavelength), 0.5e-4);
    }

    [Fact]
    public void A_horn_of_ten_waves_is_laid_out()
    {
        // derived from the closed forms, for a horn often given as an example: E mouth 10 λ, lag 0.2 λ in E and 0.375 λ in H: L = 62.5 λ, flares 9.15° and 12.52°, 13.71 λ.
        const double Length = 10.0 * 10.0 / (8.0 * 0.2);
        double width = 2.0 * Math.Sqrt(Math.Pow(Length + 0.375, 2.0) - (Length * Length));
        Close.Relative(62.5, Length, 5e-3);
        Close.Absolute(9.15, 2.0 * Math.Atan(5.0 / Length) * 180.0 / Math.PI, 0.005);
        Close.Absolute(12.52, 2.0 * Math.Atan(0.5 * width / Length) * 180.0 / Math.PI, 0.03);
        Close.Relative(13.71, width, 5e-3);

        // Derived: 10 log10(10.186 × 137.07) = 31.45 dB less 0.616 dB (s = 0.2) and 1.011 dB (t = 0.3757).
        FlaredMouth mouth = new(width, 10.0, Length, Length);
        Close.Absolute(29.82, Decibels.FromRatio(mouth.Directivity(Wave)), 0.005);
    }

    public sealed class AtADistance
    {
        // Derived from E. V. Jull, Electronics Letters 6 (1970): a horn of optimum flare at 8.75 GHz, A 186.1 mm, B 147.5 mm, t = 3/8, s = 1/4.
        private const double Wavelength = 299_792_458.0 / 8.75e9, A = 0.1861, B = 0.1475;
        private static readonly FlaredMouth Large = new(A, B, A * A / (3.0 * Wavelength), B * B / (2.0 * Wavelength));

        // Derived likewise: 10.525 GHz, A 94 mm, B 76 mm, ρ_E 135 mm, ρ_H 148 mm.
        private static readonly FlaredMouth Small = new(0.094, 0.076, 0.148, 0.135);

        [Fact]
        public void The_large_horn_is_as_described()
        {
            Close.Absolute(336.94e-3, Large.RadiusH, 0.05e-3);
            Close.Absolute(317.50e-3, Large.RadiusE, 0.05e-3);
            Close.Absolute(21.794, Decibels.FromRatio(Large.Directivity(Wavelength)), 0.0005);
            Close.Absolute(1.0108, A * A / Wavelength, 0.5e-4);
        }

        [Theory]
        [InlineData(0.25, 14.087, -7.708, -5.164)]
        [InlineData(1.0, 20.332, -1.462, -1.569)]
        [InlineData(2.0, 21.111, -0.684, -0.728)]
        [InlineData(8.0, 21.632, -0.162, -0.165)]
        public void The_large_horn_loses(double distanceInA2OverWave, double gainDb, double lossDb, double lossPerFacingHornDb)
        {
            double distance = distanceInA2OverWave * A * A / Wavelength;
            double gain = Large.Directivity(Wavelength, distance);
            Close.Absolute(gainDb, Decibels.FromRatio(gain), 0.001);
            Close.Absolute(lossDb, Decibels.FromRatio(gain / Large.Directivity(Wavelength)), 0.001);
            Close.Absolute(lossPerFacingHornDb, 0.5 * Decibels.FromRatio(FacingMouths.RelativePower(Large, Large, Wavelength, distance)), 0.001);
        }

        [Theory]
        [InlineData(0.15, -2.845)]
        [InlineData(0.3, -1.204)]
        [InlineData(0.5, -0.669)]
        [InlineData(1.0, -0.314)]
        [InlineData(2.0, -0.152)]
        [InlineData(5.0, -0.060)]
        public void The_small_horn_loses(double distance, double lossDb)
        {
            const double BenchWavelength = 299_792_458.0 / 10.525e9;
            Close.Absolute(18.487, Decibels.FromRatio(Small.Directivity(BenchWavelength)), 0.0005);
            Close.Absolute(lossDb, Decibels.FromRatio(Small.Directivity(BenchWavelength, distance) / Small.Directivity(BenchWavelength)), 0.00051);
        }

        [Theory]
        // Derived: spherical paths in the horn and to every point of the mouth, amplitude 1/R, by the two-dimensional midpoint rule below.
        [InlineData(0.25, -7.513)]
        [InlineData(1.0, -1.448)]
        [InlineData(2.0, -0.677)]
        [InlineData(8.0, -0.160)]
        public void The_large_horn_loses_with_exact_paths(double distanceInA2OverWave, double lossDb)
        {
            double distance = distanceInA2OverWave * A * A / Wavelength;
            double exactDb = Decibels.FromRatio(ExactPaths(distance) / ExactPaths(double.PositiveInfinity));
            Close.Absolute(lossDb, exactDb, 0.002);

            // The quadratic form is within 0.1 dB of that from half of A²/λ on.
            double quadraticDb = Decibels.FromRatio(Large.Directivity(Wavelength, distance) / Large.Directivity(Wavelength));
            Close.Absolute(exactDb, quadraticDb, distanceInA2OverWave < 0.5 ? 0.2 : 0.1);
        }

        [Fact]
        public void The_exact_antenna_loses_nearly_as_much()
        {
            // Independent: power density on the axis from the exact near field of the same horn, built on WR-90. The closed form leaves out the falling
            // off with angle and with distance of what each part of the mouth sends, hence 0.1 dB from half of A²/λ on.
            Horn horn = new(new RectangularGuide(22.86e-3, 10.16e-3), A, B, Large.RadiusH * (1.0 - (22.86e-3 / A)), Conductor.Brass);
            Antenna antenna = Antenna.At(horn, 8.75e9);
            foreach (double x in new[] { 0.5, 1.0, 2.0, 8.0 })
            {
                double distance = x * A * A / Wavelength;
                double exactDb = Decibels.FromRatio(NearZoneGain.OnAxis(antenna, distance) / antenna.Gain);
                double closedDb = Decibels.FromRatio(Large.Directivity(Wavelength, distance) / Large.Directivity(Wavelength));
                Close.Absolute(exactDb, closedDb, 0.1);
            }
        }

        private static double ExactPaths(double distance)
        {
            const int N = 300;
            Complex sum = Complex.Zero;
            for (int i = 0; i < N; i++)
            {
                double y = A * (((i + 0.5) / N) - 0.5);
                for (int j = 0; j < N; j++)
                {
                    double z = B * (((j + 0.5) / N) - 0.5);
                    double path = Beyond(Large.RadiusH, y * y) + Beyond(Large.RadiusE, z * z) + Beyond(distance, (y * y) + (z * z));
                    sum += Complex.FromPolarCoordinates(Math.Cos(Math.PI * y / A), -2.0 * Math.PI * path / Wavelength);
                }
            }

            return sum.Magnitude * sum.Magnitude;
        }

        private static double Beyond(double radius, double square) => double.IsInfinity(radius) ? 0.0 : Math.Sqrt((radius * radius) + square) - radius;

        [Fact]
        public void A_horn_loses_six_times_more_than_a_mouth_in_phase()
        {
            // Derived, consistent with E. H. Braun, IRE Trans. AP-4 (1956): 0.68 dB against less than 0.1 dB at 2A²/λ.
            FlaredMouth flat = new(A, B, None, None);
            double distance = 2.0 * A * A / Wavelength;
            double flatDb = Decibels.FromRatio(flat.Directivity(Wavelength, distance) / flat.Directivity(Wavelength));
            double hornDb = Decibels.FromRatio(Large.Directivity(Wavelength, distance) / Large.Directivity(Wavelength));
            Assert.InRange(flatDb, -0.1, 0.0);
            Assert.True(hornDb / flatDb > 6.0);
        }

        [Fact]
        public void Beyond_twice_2A2_over_wave_the_loss_falls_as_the_distance()
        {
            // Law: the added lag is small and adds linearly. Between 4 and 8 A²/λ the losses are as 2.04 to 1 (derived).
            double Loss(double x) => Decibels.FromRatio(Large.Directivity(Wavelength, x * A * A / Wavelength) / Large.Directivity(Wavelength));
            Close.Relative(2.04, Loss(4.0) / Loss(8.0), 0.03);
        }
    }

    [Fact]
    public void The_half_power_widths_are_those_of_the_optimum_horn()
    {
        // Stutzman and Thiele, Antenna Theory and Design: 54° λ/B and 78° λ/A for narrow beams; exact coefficients 53.88° and 77.90°.
        FlaredMouth mouth = new(40.0, 40.0, 1600.0 / 3.0, 800.0);
        Close.Absolute(53.88 / 40.0, mouth.HalfPowerWidthE(Wave)!.Value * 180.0 / Math.PI, 0.003);
        Close.Absolute(77.90 / 40.0, mouth.HalfPowerWidthH(Wave)!.Value * 180.0 / Math.PI, 0.003);
    }

    [Fact]
    public void A_mouth_below_half_a_wave_has_no_half_power_width() => Assert.Null(new FlaredMouth(0.8, 0.35, None, None).HalfPowerWidthE(Wave));

    [Fact]
    public void The_phase_centre_lies_behind_the_mouth_and_at_it_without_a_flare()
    {
        // Milligan, Modern Antenna Design (2005), from memory: 0.286 ρ and 0.134 ρ at s = t = 0.2.
        FlaredMouth mouth = new(4.0, 4.0, 10.0, 10.0);
        Close.Absolute(2.86, mouth.PhaseCentreE(Wave), 0.005);
        Close.Absolute(1.335, mouth.PhaseCentreH(Wave), 0.005);
        Close.Absolute(0.0, new FlaredMouth(4.0, 4.0, None, 10.0).PhaseCentreH(Wave), 0.0);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_size_that_is_none_is_refused(double size)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(size, 1.0, 1.0, 1.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(1.0, size, 1.0, 1.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(1.0, 1.0, size, 1.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(1.0, 1.0, 1.0, size));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(1.0, 1.0, 1.0, 1.0).Directivity(size));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlaredMouth(1.0, 1.0, 1.0, 1.0).Directivity(1.0, size));
    }
}
