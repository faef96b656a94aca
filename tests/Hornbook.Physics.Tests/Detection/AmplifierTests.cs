using Hornbook.Physics.Detection;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class AmplifierTests
{
    private static readonly Amplifier Plain = new(Gain: 100.0, Offset: 0.0, LowerRail: -1.0, UpperRail: 5.0, NoiseDensity: 0.0, Bandwidth: 100.0);

    public sealed class Constructor
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_gain_or_bandwidth_that_is_not_finite_and_positive(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>("Gain", () => new Amplifier(wrong, 0.0, 0.0, 5.0, 0.0, 100.0));
            Assert.Throws<ArgumentOutOfRangeException>("Gain", () => Plain with { Gain = wrong });
            Assert.Throws<ArgumentOutOfRangeException>("Bandwidth", () => new Amplifier(1.0, 0.0, 0.0, 5.0, 0.0, wrong));
        }

        [Theory]
        [InlineData(5.0, 5.0)]
        [InlineData(5.0, 1.0)]
        [InlineData(0.0, double.NaN)]
        [InlineData(double.NaN, 5.0)]
        [InlineData(0.0, double.PositiveInfinity)]
        public void Rejects_rails_that_are_out_of_order(double lower, double upper) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => new Amplifier(1.0, 0.0, lower, upper, 0.0, 100.0));

        [Theory]
        [InlineData(-1e-9)]
        [InlineData(double.NaN)]
        public void Rejects_a_negative_noise(double noise) =>
            Assert.Throws<ArgumentOutOfRangeException>("NoiseDensity", () => new Amplifier(1.0, 0.0, 0.0, 5.0, noise, 100.0));
    }

    public sealed class Held
    {
        [Theory]
        [InlineData(-2.0, -1.0)]
        [InlineData(0.5, 0.5)]
        [InlineData(9.0, 5.0)]
        public void Stays_between_the_rails(double output, double expected) => Assert.Equal(expected, Plain.Held(output));
    }
}
