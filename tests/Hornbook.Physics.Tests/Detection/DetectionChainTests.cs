using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class DetectionChainTests
{
    // invented: 1000 V/W, gain 100, rails 0 and 5 V; 220 Hz and 200 Hz/V up to 1.3 kHz
    private static readonly DetectionChain Linear = new(
        new SquareDetector(1000.0, 5e3),
        new Amplifier(Gain: 100.0, Offset: 0.1, LowerRail: 0.0, UpperRail: 5.0, NoiseDensity: 10e-9, Bandwidth: 100.0),
        new LinearTone { AtZero = 220.0, Lowest = 200.0, Highest = 1300.0, Slope = 200.0 });

    private static readonly DetectionChain Exponential =
        Linear with { Tone = new ExponentialTone { AtZero = 220.0, Lowest = 100.0, Highest = 4000.0, OctavesPerVolt = 1.0 } };

    public sealed class Hear
    {
        [Fact]
        public void Goes_from_power_to_hertz()
        {
            HeardTone heard = Linear.Hear(10e-6);
            // derived: 10 µW × 1000 V/W; × 100 + 0.1 V; 220 Hz + 200 Hz/V × 1.1 V
            Close.Relative(10e-3, heard.DetectorVoltage, 1e-14);
            Close.Relative(1.1, heard.AmplifierVoltage, 1e-14);
            Close.Relative(440.0, heard.Tone, 1e-14);
            Assert.Equal(ToneState.Clear, heard.State);
            Assert.Equal("A4", heard.Note.Name);
        }

        [Fact]
        public void Raises_an_exponential_tone_by_an_octave_a_volt() =>
            // derived: 0.9 V more at the amplifier is 9 µW; 1.0 V in all
            Close.Relative(440.0, Exponential.Hear(9e-6).Tone, 1e-13);

        [Fact]
        public void Stops_at_the_upper_rail()
        {
            HeardTone heard = Linear.Hear(1e-3);
            Assert.Equal(5.0, heard.AmplifierVoltage);
            Assert.Equal(ToneState.Clipped, heard.State);
            Assert.Equal(0.0, heard.JitterCents);
        }

        [Fact]
        public void Stops_at_the_highest_tone()
        {
            DetectionChain low = Linear with { Tone = new LinearTone { AtZero = 220.0, Lowest = 200.0, Highest = 700.0, Slope = 200.0 } };
            HeardTone heard = low.Hear(30e-6);
            Assert.Equal(700.0, heard.Tone);
            Assert.Equal(ToneState.Clipped, heard.State);
        }

        [Fact]
        public void Is_drowned_just_below_the_weakest_power_and_clear_just_above()
        {
            Assert.Equal(ToneState.Drowned, Linear.Hear(Linear.WeakestPower * 0.999).State);
            Assert.Equal(ToneState.Clear, Linear.Hear(Linear.WeakestPower * 1.001).State);
        }

        [Fact]
        public void Is_drowned_by_no_power_at_all() => Assert.Equal(ToneState.Drowned, Linear.Hear(0.0).State);

        [Fact]
        public void Adds_thermal_and_amplifier_noise_in_power() =>
            // derived: 100 × √[(4 × 1.380649e-23 × 293.15 × 5000 + (10e-9)²) × 100 Hz]
            Close.Relative(100.0 * Math.Sqrt(((4.0 * 1.380649e-23 * 293.15 * 5000.0) + 1e-16) * 100.0), Linear.Hear(1e-6).AmplifierNoise, 1e-12);

        [Fact]
        public void Wanders_by_the_noise_times_the_slope_of_a_linear_tone()
        {
            HeardTone heard = Linear.Hear(10e-6);
            // derived: (1200/ln 2) × slope × noise/f, to first order; the third order is (200 × 1.35e-5/440)²/3
            Close.Relative(1200.0 / Math.Log(2.0) * 200.0 * heard.AmplifierNoise / 440.0, heard.JitterCents, 1e-9);
        }

        [Fact]
        public void Wanders_equally_at_each_pitch_of_an_exponential_tone() =>
            // derived: 1200 cents an octave, one octave a volt
            Gen.Double[1e-6, 40e-6].Sample(power =>
                Close.Relative(1200.0 * Exponential.Noise, Exponential.Hear(power).JitterCents, 1e-9));

        [Fact]
        public void Never_wanders_beyond_the_limits_of_the_tone()
        {
            DetectionChain deaf = Linear with { Amplifier = Linear.Amplifier with { NoiseDensity = 1.0 } };
            // derived: half of log2(1300/200) octaves at most
            Assert.InRange(deaf.Hear(1e-6).JitterCents, 1.0, 600.0 * Math.Log2(1300.0 / 200.0));
        }

        [Fact]
        public void Never_sounds_lower_for_more_power() =>
            Gen.Select(Gen.Double[-70.0, 10.0], Gen.Double[0.0, 10.0]).Sample((powerDbm, moreDb) =>
                Linear.Hear(Decibels.DbmToPower(powerDbm + moreDb)).Tone >= Linear.Hear(Decibels.DbmToPower(powerDbm)).Tone);

        [Fact]
        public void Allocates_nothing()
        {
            DetectionChain chain = Linear with { Detector = new DiodeDetector(Diode.Hsms285x, 10.5e9) };
            chain.Hear(1e-5);
            long before = GC.GetAllocatedBytesForCurrentThread();
            double sum = 0.0;
            for (int i = 0; i < 1000; i++)
            {
                sum += chain.Hear(i * 1e-6).Tone;
            }

            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
            Assert.True(sum > 0.0);
        }

        [Theory]
        [InlineData(-1e-9)]
        [InlineData(double.NaN)]
        public void Rejects_a_power_that_is_negative_or_no_number(double power) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => Linear.Hear(power));
    }

    public sealed class Constructor
    {
        [Fact]
        public void Rejects_a_tone_whose_limits_are_out_of_order() =>
            Assert.Equal(
                "highest tone = 200 Hz; must be above the lowest, 300 Hz",
                Assert.Throws<ArgumentException>(() =>
                    Linear with { Tone = new LinearTone { AtZero = 220.0, Lowest = 300.0, Highest = 200.0, Slope = 1.0 } }).Message);
    }
}
