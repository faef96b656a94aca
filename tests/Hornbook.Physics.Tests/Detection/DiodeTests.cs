using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class DiodeTests
{
    public sealed class JunctionResistance
    {
        // [Agilent1999] gives R_j = 8.33e-5 n T/(I_s + I_b), 8771 Ω at 298 K for the HSMS-285x ("9 kΩ"). Its constant is a rounded
        // k/q = 8.617e-5 V/K, 3.4 % too low, hence the tolerance.
        [Fact]
        public void Agrees_with_the_data_sheet_to_the_rounding_of_its_constant() =>
            Close.Relative(8771.0, Diode.Hsms285x.JunctionResistance(298.0), 0.036);

        [Fact]
        public void Is_scale_voltage_over_saturation_current() =>
            // derived: 1.06 × 1.380649e-23 × 298/(1.602176634e-19 × 3e-6)
            Close.Relative(9073.46, Diode.Hsms285x.JunctionResistance(298.0), 1e-5);
    }

    public sealed class Constructor
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(-1e-6)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_saturation_current_that_is_not_finite_and_positive(double current) =>
            Assert.Throws<ArgumentOutOfRangeException>("saturationCurrent", () => new Diode(current, 1.0));

        [Theory]
        [InlineData(0.9)]
        [InlineData(3.1)]
        [InlineData(double.NaN)]
        public void Rejects_an_ideality_factor_that_no_diode_has(double ideality) =>
            Assert.Throws<ArgumentOutOfRangeException>(nameof(ideality), () => new Diode(1e-6, ideality));

        [Theory]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        public void Rejects_a_negative_series_resistance_or_capacitance(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>("seriesResistance", () => new Diode(1e-6, 1.0, seriesResistance: wrong));
            Assert.Throws<ArgumentOutOfRangeException>("junctionCapacitance", () => new Diode(1e-6, 1.0, junctionCapacitance: wrong));
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(double.NaN)]
        public void Rejects_a_breakdown_at_nothing(double breakdown) =>
            Assert.Throws<ArgumentOutOfRangeException>("breakdownVoltage", () => new Diode(1e-6, 1.0, breakdownVoltage: breakdown));
    }
}
