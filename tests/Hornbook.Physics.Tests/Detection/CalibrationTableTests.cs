using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class CalibrationTableTests
{
    // invented: five points such as a class would take with a step attenuator
    private static readonly CalibrationPoint[] Points =
        [new(1e-6, 2.1e-3), new(1e-4, 110e-3), new(1e-5, 18e-3), new(1e-3, 420e-3), new(1e-7, 0.22e-3)];

    private static readonly CalibrationTable Table = new(Points, 5e3);

    public sealed class Voltage
    {
        [Fact]
        public void Passes_through_every_point() =>
            Assert.All(Points, p => Close.Relative(p.Voltage, Table.Voltage(p.Power), 1e-13));

        [Fact]
        public void Rises_with_the_power_everywhere() =>
            Gen.Select(Gen.Double[-80.0, 20.0], Gen.Double[0.001, 5.0]).Sample((powerDbm, moreDb) =>
                Table.Voltage(Decibels.DbmToPower(powerDbm + moreDb)) > Table.Voltage(Decibels.DbmToPower(powerDbm)));

        [Fact]
        public void Keeps_a_power_law_that_the_points_obey()
        {
            // derived: V = 3 P^0.8
            CalibrationTable law = new([.. Points.Select(p => p with { Voltage = 3.0 * Math.Pow(p.Power, 0.8) })], 5e3);
            Gen.Double[-90.0, 10.0].Sample(powerDbm =>
            {
                double power = Decibels.DbmToPower(powerDbm);
                Close.Relative(3.0 * Math.Pow(power, 0.8), law.Voltage(power), 1e-12);
            });
        }

        [Fact]
        public void Goes_on_with_the_slope_of_the_last_interval() =>
            // derived: 110 mV → 420 mV for ten times the power, so 420 × 420/110 for ten times more
            Close.Relative(0.42 * 0.42 / 0.11, Table.Voltage(1e-2), 1e-12);

        [Fact]
        public void Of_nothing_is_nothing() => Assert.Equal(0.0, Table.Voltage(0.0));
    }

    public sealed class Power
    {
        [Fact]
        public void Undoes_the_voltage() => Gen.Double[-80.0, 20.0].Sample(powerDbm =>
        {
            double power = Decibels.DbmToPower(powerDbm);
            Close.Relative(power, Table.Power(Table.Voltage(power)), 1e-11); // the root is found to 1e-14 in ln P of up to 16
        });
    }

    public sealed class TrustedPower
    {
        [Fact]
        public void Is_from_the_first_point_to_the_last() => Assert.Equal((1e-7, 1e-3), Table.TrustedPower);
    }

    public sealed class Constructor
    {
        [Fact]
        public void Rejects_fewer_than_three_points() =>
            Assert.StartsWith(
                "points = 2; ",
                Assert.Throws<ArgumentException>(() => new CalibrationTable(Points[..2], 5e3)).Message,
                StringComparison.Ordinal);

        [Fact]
        public void Rejects_a_voltage_that_does_not_rise() =>
            Assert.Contains(
                "the voltage must rise with the power",
                Assert.Throws<ArgumentException>(() => new CalibrationTable([.. Points, new(2e-3, 0.4)], 5e3)).Message,
                StringComparison.Ordinal);

        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_point_that_is_not_finite_and_positive(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => new CalibrationTable([.. Points, new(wrong, 1.0)], 5e3));
            Assert.Throws<ArgumentOutOfRangeException>(() => new CalibrationTable([.. Points, new(1.0, wrong)], 5e3));
        }
    }
}
