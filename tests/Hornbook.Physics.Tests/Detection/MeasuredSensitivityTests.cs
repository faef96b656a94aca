using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class MeasuredSensitivityTests
{
    public sealed class OfAJunction
    {
        // derived: ln I0(x) by its power series; I0 itself [AbramowitzStegun1964] table 9.8.
        [Theory]
        [InlineData(0.1, 0.002498)]
        [InlineData(0.2, 0.009975)]
        [InlineData(0.5, 0.061550)]
        [InlineData(1.0, 0.235914)]
        [InlineData(1.5, 0.498787)]
        [InlineData(2.0, 0.823994)]
        [InlineData(3.0, 1.585308)]
        [InlineData(5.0, 3.304682)]
        [InlineData(10.0, 7.942972)]
        public void Is_the_logarithm_of_the_Bessel_function(double drive, double expected) =>
            Close.Absolute(expected, VoltageAt(drive), 6e-7); // six printed decimals

        // derived: 10 log10(4 ln I0(x)/x²)
        [Theory]
        [InlineData(0.1, -0.0027)]
        [InlineData(1.0, -0.2519)]
        [InlineData(2.0, -0.8408)]
        [InlineData(5.0, -2.7675)]
        [InlineData(10.0, -4.9796)]
        public void Leaves_the_square_law_slowly(double drive, double expectedDb) =>
            Close.Absolute(expectedDb, Decibels.FromRatio(4.0 * VoltageAt(drive) / (drive * drive)), 1e-4);

        // derived: peak √(2 × 50 Ω × P) across a junction with n = 1 at 300 K, so γ = 50 Ω/(2 V_t): 0.958, 8.892, 59.76 mV.
        [Theory]
        [InlineData(-30.0, 0.958e-3, -0.040)]
        [InlineData(-20.0, 8.892e-3, -0.364)]
        [InlineData(-10.0, 59.76e-3, -2.09)]
        public void Gives_what_fifty_ohms_would_drive(double powerDbm, double expected, double offSquareDb)
        {
            const double ThermalVoltage = Constants.Boltzmann * 300.0 / Constants.ElementaryCharge;
            JunctionDetector detector = new(50.0 / (2.0 * ThermalVoltage), 9e3) { Temperature = 300.0 };
            double power = Decibels.DbmToPower(powerDbm);
            Close.Relative(expected, detector.Voltage(power), 1e-3); // three printed digits
            Close.Absolute(offSquareDb, Decibels.FromRatio(detector.Voltage(power) / (detector.Sensitivity * power)), 5e-3);
        }

        [Fact]
        public void Does_not_overflow_where_the_Bessel_function_would()
        {
            // derived: ln I0(x) → x − ½ ln(2πx) + 1/(8x), the leading terms of [AbramowitzStegun1964] eq. 9.7.1
            const double Drive = 5000.0;
            Close.Relative(Drive - (0.5 * Math.Log(2.0 * Math.PI * Drive)) + (1.0 / (8.0 * Drive)), VoltageAt(Drive), 1e-11);
        }

        // In units of the scale voltage, at a drive x: γP/V_t = x²/4.
        private static double VoltageAt(double drive)
        {
            JunctionDetector detector = new(1000.0, 9e3);
            double scale = Constants.Boltzmann * detector.Temperature / Constants.ElementaryCharge;
            return detector.Voltage(0.25 * drive * drive * scale / detector.Sensitivity) / scale;
        }
    }

    public sealed class Power
    {
        private static readonly MeasuredSensitivity[] Detectors =
        [
            new SquareDetector(2000.0, 5e3),
            new JunctionDetector(2000.0, 5e3),
            new JunctionDetector(2000.0, 5e3) { Ideality = 1.2, Temperature = 310.0 },
            new PowerLawDetector(2000.0, 5e3, 0.8, 1e-5),
        ];

        [Fact]
        public void Undoes_the_voltage() =>
            Gen.Select(Gen.Int[0, Detectors.Length - 1], Gen.Double[-80.0, 25.0]).Sample((which, powerDbm) =>
            {
                MeasuredSensitivity detector = Detectors[which];
                double power = Decibels.DbmToPower(powerDbm);
                Close.Relative(power, detector.Power(detector.Voltage(power)), 1e-11); // ln I0 is flat at weak drive: 1e-15 grows by 1/x
            });

        [Fact]
        public void Of_nothing_is_nothing() => Assert.All(Detectors, d =>
        {
            Assert.Equal(0.0, d.Voltage(0.0));
            Assert.Equal(0.0, d.Power(0.0));
            Assert.Equal(0.0, d.Power(-1e-3));
        });
    }

    public sealed class Laws
    {
        [Fact]
        public void Agree_for_weak_waves() =>
            // derived: the junction's next term is −x²/16 = −γP/(4 V_t) of the first, 2e-7 here
            Close.Relative(new SquareDetector(2000.0, 5e3).Voltage(1e-11), new JunctionDetector(2000.0, 5e3).Voltage(1e-11), 1e-6);

        [Fact]
        public void Of_a_power_meet_the_sensitivity_at_the_reference() =>
            Close.Relative(0.02, new PowerLawDetector(2000.0, 5e3, 0.7, 1e-5).Voltage(1e-5), 1e-14); // derived: 2000 V/W × 10 µW

        [Fact]
        public void Square_is_trusted_until_half_a_decibel_is_missing()
        {
            SquareDetector square = new(2000.0, 5e3);
            double highest = square.TrustedPower.Highest;
            // derived: 10 log10(4 ln I0(1.5)/1.5²)
            Close.Absolute(-0.5221, Decibels.FromRatio(new JunctionDetector(2000.0, 5e3).Voltage(highest) / square.Voltage(highest)), 1e-4);
        }

        [Fact]
        public void A_junction_is_trusted_to_two_tenths_of_a_volt()
        {
            JunctionDetector junction = new(2000.0, 5e3);
            // derived: ln I0(10) = 7.942972 times kT/q at 293.15 K, 25.2617 mV
            Close.Relative(7.942972 * 25.2617e-3, junction.Voltage(junction.TrustedPower.Highest), 1e-5);
        }
    }

    public sealed class Constructor
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_what_is_not_finite_and_positive(double wrong)
        {
            Assert.Throws<ArgumentOutOfRangeException>("Sensitivity", () => new SquareDetector(wrong, 5e3));
            Assert.Throws<ArgumentOutOfRangeException>("VideoResistance", () => new JunctionDetector(1e3, wrong));
            Assert.Throws<ArgumentOutOfRangeException>("ReferencePower", () => new PowerLawDetector(1e3, 5e3, 1.0, wrong));
            Assert.Throws<ArgumentOutOfRangeException>("Temperature", () => new SquareDetector(1e3, 5e3) { Temperature = wrong });
        }

        [Theory]
        [InlineData(0.05)]
        [InlineData(2.5)]
        [InlineData(double.NaN)]
        public void Rejects_an_exponent_that_no_detector_has(double exponent) =>
            Assert.Throws<ArgumentOutOfRangeException>("Exponent", () => new PowerLawDetector(1e3, 5e3, exponent, 1e-5));
    }
}
