using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class ToneLawTests
{
    private static readonly LinearTone Linear = new() { AtZero = 220.0, Lowest = 100.0, Highest = 4000.0, Slope = 300.0 };

    private static readonly ExponentialTone Exponential = new() { AtZero = 220.0, Lowest = 100.0, Highest = 4000.0, OctavesPerVolt = 0.5 };

    public sealed class Voltage
    {
        [Fact]
        public void Undoes_the_frequency() =>
            Gen.Double[110.0, 3900.0].Sample(frequency =>
            {
                Close.Relative(frequency, Linear.Frequency(Linear.Voltage(frequency)), 1e-13);
                Close.Relative(frequency, Exponential.Frequency(Exponential.Voltage(frequency)), 1e-13);
            });
    }

    public sealed class IsLimited
    {
        [Fact]
        public void Tells_when_the_tone_stands_at_an_end()
        {
            Assert.True(Linear.IsLimited(20.0)); // derived: 220 + 300 × 20 Hz
            Assert.True(Linear.IsLimited(-1.0)); // derived: 220 − 300 Hz
            Assert.False(Linear.IsLimited(1.0));
        }
    }

    public sealed class Settings
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Reject_a_frequency_that_is_not_finite_and_positive(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>("AtZero", () => Linear with { AtZero = wrong });
            Assert.Throws<ArgumentOutOfRangeException>("Lowest", () => Linear with { Lowest = wrong });
            Assert.Throws<ArgumentOutOfRangeException>("Highest", () => Linear with { Highest = wrong });
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(double.NaN)]
        public void Reject_a_tone_that_does_not_move(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>("Slope", () => Linear with { Slope = wrong });
            Assert.Throws<ArgumentOutOfRangeException>("OctavesPerVolt", () => Exponential with { OctavesPerVolt = wrong });
        }
    }
}
