using CsCheck;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Guides;

public sealed class GuideWaveTests
{
    private static readonly RectangularGuide Wr90 = StandardGuides.Find("WR-90")!.Guide;

    public sealed class Travelling
    {
        [Theory]
        // Derived: λ_g = λ/√(1 − (f_c/f)²) with a = 22.86 mm and the exact speed of light.
        [InlineData(8.2e9, 60.886e-3)]
        [InlineData(10e9, 39.707e-3)]
        [InlineData(10.525e9, 36.414e-3)]
        [InlineData(12.4e9, 28.485e-3)]
        public void Its_length_in_WR90(double frequency, double expected) =>
            Close.Absolute(expected, GuideWave.At(Wr90, frequency).GuideWavelength, 0.5e-6);

        [Fact]
        public void Its_length_over_the_free_one_at_10_GHz_in_WR90() =>
            // Derived: 1/√(1 − (6.5571/10)²).
            Close.Absolute(1.32449, GuideWave.At(Wr90, 10e9).GuideWavelength * 10e9 / Constants.SpeedOfLight, 1e-5);

        [Fact]
        public void Its_impedance_and_phase_velocity_at_10_GHz_in_WR90()
        {
            // Derived: Z = η λ_g/λ = 376.7303 Ω × 1.32449; v = f λ_g.
            GuideWave wave = GuideWave.At(Wr90, 10e9);
            Close.Relative(498.97, wave.WaveImpedance.Real, 5e-5);
            Close.Absolute(0.0, wave.WaveImpedance.Imaginary, 1e-9);
            Close.Relative(3.9707e8, wave.PhaseVelocity, 5e-5);
        }

        [Fact]
        public void Phase_and_group_velocity_multiply_to_the_square_of_the_free_one() =>
            Gen.Select(Gen.Double[7e9, 100e9], Gen.Double[1.0, 10.0]).Sample((frequency, permittivity) =>
            {
                GuideWave wave = GuideWave.At(Wr90, frequency, permittivity);
                double free = Constants.SpeedOfLight / Math.Sqrt(permittivity);
                Close.Relative(free * free, wave.PhaseVelocity * wave.GroupVelocity, 1e-12);
            });

        [Fact]
        public void The_group_velocity_is_the_slope_of_the_dispersion()
        {
            // v_g = dω/dβ by a central difference of ±1 MHz, whose error is of the order (1e6/1e10)².
            double rise = GuideWave.At(Wr90, 10.001e9).PropagationConstant.Imaginary - GuideWave.At(Wr90, 9.999e9).PropagationConstant.Imaginary;
            Close.Relative(2.0 * Math.PI * 2e6 / rise, GuideWave.At(Wr90, 10e9).GroupVelocity, 1e-6);
        }
    }

    public sealed class Attenuation
    {
        [Fact]
        public void Of_a_filled_copper_guide_as_in_the_textbook()
        {
            // D. M. Pozar, Microwave Engineering (2012), Example 3.1, from memory: the guide of the mode table at 15 GHz, copper of 5.8e7 S/m:
            // β = 345.1 rad/m, R_s = 0.032 Ω, α = 0.050 Np/m = 0.434 dB/m. The printed figures have two to three digits and c = 3e8.
            Conductor copper = new("copper", 5.8e7);
            GuideWave wave = GuideWave.At(new RectangularGuide(1.07e-2, 0.43e-2), 15e9, relativePermittivity: 2.08);
            Close.Relative(345.1, wave.PropagationConstant.Imaginary, 2e-3);
            Close.Absolute(0.032, copper.SurfaceResistance(15e9), 0.0005);
            Close.Absolute(0.050, wave.Attenuation(copper), 0.0005);
        }

        [Fact]
        public void Equals_the_wall_currents_integrated_one_by_one()
        {
            // Independent: α = P_lost/(2 P) with H of TE10 written out on the four walls and the power over the cross-section, by the midpoint rule.
            const double Frequency = 10e9;
            double a = Wr90.Width, b = Wr90.Height;
            GuideWave wave = GuideWave.At(Wr90, Frequency);
            double beta = wave.PropagationConstant.Imaginary, z = wave.WaveImpedance.Real, omegaMu = 2.0 * Math.PI * Frequency * Constants.MagneticConstant;

            // With E_y = sin(πx/a): H_x = −sin(πx/a)/Z, H_z = j(π/a)cos(πx/a)/(ωµ).
            const int N = 2000;
            double broad = 0.0, power = 0.0;
            for (int i = 0; i < N; i++)
            {
                double phase = Math.PI * (i + 0.5) / N;
                double hx = Math.Sin(phase) / z, hz = Math.PI / a * Math.Cos(phase) / omegaMu;
                broad += ((hx * hx) + (hz * hz)) * a / N;
                power += 0.5 * b * Math.Sin(phase) * hx * a / N;
            }

            double side = b * Math.Pow(Math.PI / a / omegaMu, 2.0);
            double lost = 0.5 * Conductor.Brass.SurfaceResistance(Frequency) * 2.0 * (broad + side);
            Assert.True(beta > 0.0);
            Close.Relative(lost / (2.0 * power), wave.Attenuation(Conductor.Brass), 1e-9);
        }

        [Fact]
        public void Falls_with_the_root_of_the_conductivity()
        {
            double copper = GuideWave.At(Wr90, 10e9).Attenuation(new Conductor("good", 4e7));
            double poor = GuideWave.At(Wr90, 10e9).Attenuation(new Conductor("poor", 1e7));
            Close.Relative(2.0, poor / copper, 1e-12);
        }

        [Fact]
        public void Below_cutoff_it_is_the_dying_out_and_no_longer_of_the_walls()
        {
            // Derived: α = √((π/a)² − k²) at 6.5 GHz in WR-90.
            double expected = Math.Sqrt(Math.Pow(Math.PI / 22.86e-3, 2.0) - Math.Pow(2.0 * Math.PI * 6.5e9 / 299_792_458.0, 2.0));
            Close.Relative(expected, GuideWave.At(Wr90, 6.5e9).Attenuation(Conductor.Brass), 1e-12);
        }
    }

    public sealed class Use
    {
        [Theory]
        // Derived from the standard: WR-90 begins at 6.557 GHz, is recommended from 8.2 to 12.4 GHz, and TE20 begins at 13.114 GHz.
        [InlineData(6.5e9, GuideUse.BelowCutoff)]
        [InlineData(6.6e9, GuideUse.OutsideRecommendedBand)]
        [InlineData(8.2e9, GuideUse.SingleMode)]
        [InlineData(10.525e9, GuideUse.SingleMode)]
        [InlineData(12.4e9, GuideUse.SingleMode)]
        [InlineData(13.1e9, GuideUse.OutsideRecommendedBand)]
        [InlineData(13.2e9, GuideUse.Overmoded)]
        [InlineData(24.125e9, GuideUse.Overmoded)]
        public void Of_WR90(double frequency, GuideUse expected) => Assert.Equal(expected, GuideWave.At(Wr90, frequency).Use);

        [Fact]
        public void A_square_guide_is_never_single_mode() =>
            Gen.Double[7e9, 60e9].Sample(frequency =>
                Assert.Equal(GuideUse.Overmoded, GuideWave.At(new RectangularGuide(22.86e-3, 22.86e-3), frequency).Use));

        [Fact]
        public void A_guide_stood_on_its_side_is_told_so()
        {
            // The broad wall is the second number by mistake: what travels first is TE01, and TE10 begins at 14.75 GHz.
            Assert.Equal(GuideUse.BelowCutoff, GuideWave.At(new RectangularGuide(10.16e-3, 22.86e-3), 10e9).Use);
            Assert.Equal(GuideUse.Overmoded, GuideWave.At(new RectangularGuide(10.16e-3, 22.86e-3), 15e9).Use);
        }
    }

    [Fact]
    public void No_frequency_gives_a_number_that_is_none() =>
        Gen.Double[1e6, 1e12].Sample(frequency =>
        {
            GuideWave wave = GuideWave.At(Wr90, frequency);
            Assert.False(double.IsNaN(wave.GuideWavelength + wave.PhaseVelocity + wave.GroupVelocity));
            Assert.True(double.IsFinite(wave.WaveImpedance.Magnitude));
            Assert.True(double.IsFinite(wave.Attenuation(Conductor.Brass)));
        });

    [Fact]
    public void Below_cutoff_the_impedance_is_inductive() =>
        Assert.True(GuideWave.At(Wr90, 5e9).WaveImpedance.Imaginary > 0.0);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_frequency_that_is_none_is_refused(double frequency)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => GuideWave.At(Wr90, frequency));
        Assert.Contains("frequency = ", refusal.Message, StringComparison.Ordinal);
    }
}
