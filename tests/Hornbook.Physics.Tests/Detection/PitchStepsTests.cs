using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using MathNet.Numerics.Integration;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class PitchStepsTests
{
    public sealed class DifferenceLimen
    {
        // [WierJesteadtGreen1977] fit at 40 dB sensation level, from memory: log10 DLF = 0.026 √f − 0.533
        [Theory]
        [InlineData(200.0, 0.68)]
        [InlineData(500.0, 1.12)]
        [InlineData(1000.0, 1.95)]
        [InlineData(2000.0, 4.26)]
        [InlineData(4000.0, 12.9)]
        [InlineData(8000.0, 62.0)]
        public void Is_that_of_the_fit(double frequency, double expected) =>
            Close.Relative(expected, PitchSteps.DifferenceLimen(frequency), 0.01); // two or three printed digits
    }

    public sealed class Between
    {
        // Independent method: Gauss–Kronrod quadrature of 1/DLF.
        [Theory]
        [InlineData(200.0, 400.0)]
        [InlineData(440.0, 441.0)]
        [InlineData(100.0, 8000.0)]
        public void Is_the_integral_of_one_over_the_limen(double low, double high) =>
            Close.Relative(
                GaussKronrodRule.Integrate(f => 1.0 / PitchSteps.DifferenceLimen(f), low, high, out _, out _, 1e-13),
                PitchSteps.Between(low, high),
                1e-11);

        [Fact]
        public void Is_one_for_one_limen() =>
            // derived: 1/DLF changes by 0.1 % over one step at 1 kHz
            Close.Relative(1.0, PitchSteps.Between(1000.0, 1000.0 + PitchSteps.DifferenceLimen(1000.0)), 2e-3);

        [Fact]
        public void Does_not_care_for_the_order() =>
            Gen.Select(Gen.Double[20.0, 10e3], Gen.Double[20.0, 10e3]).Sample((one, other) =>
                PitchSteps.Between(one, other) == PitchSteps.Between(other, one));

        [Theory]
        [InlineData(-1.0)]
        [InlineData(30e3)]
        [InlineData(double.NaN)]
        public void Rejects_what_nobody_hears(double wrong) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => PitchSteps.Between(440.0, wrong));
    }

    public sealed class Up
    {
        [Fact]
        public void Undoes_the_count() =>
            Gen.Select(Gen.Double[50.0, 3000.0], Gen.Double[0.1, 200.0]).Sample((frequency, steps) =>
                Close.Relative(steps, PitchSteps.Between(frequency, PitchSteps.Up(frequency, steps)), 1e-7)); // the root is found to 1e-9 Hz

        [Fact]
        public void Goes_down_by_negative_steps() => Assert.True(PitchSteps.Up(440.0, -3.0) < 440.0);
    }
}
