using CsCheck;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class DiodeDetectorTests
{
    // What the printed numbers below were made with, found by trying: HSMS-285x, 50 Ω, 1 MΩ, 300 K, no capacitance.
    private static readonly DiodeDetector Published = new(Diode.Hsms285x, frequency: 0.0) { Temperature = 300.0 };

    private static readonly DiodeDetector Balanced = Published with { Law = DiodeLaw.CurrentBalance };

    public sealed class Voltage
    {
        // derived: [HarrisonLePolozec1994] for the HSMS-285x of [Agilent1999] at 50 Ω with 1 MΩ; the temperature of 300 K was found
        // by trying 290 to 300 K (at 298 K the −40 dBm value differs by 0.8 %).
        [Theory]
        [InlineData(-40.0, 0.2861e-3)]
        [InlineData(-30.0, 3.428e-3)]
        [InlineData(-20.0, 28.33e-3)]
        [InlineData(-10.0, 146.7e-3)]
        [InlineData(0.0, 559.6e-3)]
        public void Is_that_of_the_published_law(double powerDbm, double expected) =>
            Close.Relative(expected, Published.Voltage(Decibels.DbmToPower(powerDbm)), 5e-4); // four printed digits

        // Independent method: bisection on the law as printed, with I0 by the trapezoidal rule on its integral.
        [Theory]
        [InlineData(-45.0)]
        [InlineData(-30.0)]
        [InlineData(-12.5)]
        [InlineData(0.0)]
        [InlineData(10.0)]
        [InlineData(20.0)]
        public void Solves_the_equation_as_printed(double powerDbm)
        {
            double power = Decibels.DbmToPower(powerDbm);
            Close.Relative(RawDiodeLaw.Voltage(Published, power), Published.Voltage(power), 1e-9);
        }

        [Fact]
        public void Solves_the_equation_for_any_diode_and_load() =>
            Gen.Select(Gen.Double[-8.0, -5.0], Gen.Double[1.0, 2.0], Gen.Double[0.0, 60.0], Gen.Double[1.0, 7.0], Gen.Double[-30.0, 12.0])
                .Sample(
                    (logSaturation, ideality, series, logLoad, powerDbm) =>
                    {
                        Diode diode = new(Math.Pow(10.0, logSaturation), ideality, series);
                        DiodeDetector detector = new(diode, 0.0) { LoadResistance = Math.Pow(10.0, logLoad) };
                        double power = Decibels.DbmToPower(powerDbm);
                        Close.Relative(RawDiodeLaw.Voltage(detector, power), detector.Voltage(power), 1e-6);
                    },
                    iter: 200);

        // Independent method: the circuit itself, its current solved at 512 phases of the wave and averaged. 0.08 dB is what the
        // closed form neglects: that R_g + R_s = 75 Ω stand in series with a junction of 9 kΩ (75/9000 twice over, 0.07 dB).
        [Theory]
        [InlineData(-60.0)]
        [InlineData(-40.0)]
        [InlineData(-20.0)]
        [InlineData(0.0)]
        [InlineData(15.0)]
        public void Without_the_constant_term_is_near_the_circuit_it_stands_for(double powerDbm)
        {
            double power = Decibels.DbmToPower(powerDbm);
            double off = Decibels.FromRatio(Balanced.Voltage(power) / DiodeCircuit.Voltage(Balanced, power));
            Assert.InRange(off, 0.0, 0.08);
        }

        // derived: against the same circuit; the constant term costs 0.93 dB at −40 dBm and nothing that matters from −30 dBm on.
        [Theory]
        [InlineData(-40.0, -0.93)]
        [InlineData(-30.0, -0.03)]
        public void As_published_is_below_the_circuit_for_weak_waves(double powerDbm, double expectedDb)
        {
            double power = Decibels.DbmToPower(powerDbm);
            Close.Absolute(expectedDb, Decibels.FromRatio(Published.Voltage(power) / DiodeCircuit.Voltage(Published, power)), 0.01);
        }

        [Fact]
        public void Is_square_for_weak_waves_without_the_constant_term() =>
            Close.Relative(10.0, Balanced.Voltage(1e-12) / Balanced.Voltage(1e-13), 1e-6); // law: V ∝ P; the next term is of order x² = 6e-7

        [Fact]
        public void Is_linear_for_strong_waves() =>
            // law: V → peak voltage less a logarithm, so that ten times the voltage needs a little under a hundred times the power
            Assert.InRange(Published.Voltage(100.0) / Published.Voltage(1.0), 9.9, 10.5);

        [Fact]
        public void Never_falls_and_is_never_negative() =>
            Gen.Select(Gen.Double[-120.0, 40.0], Gen.Double[0.0, 10.0]).Sample((powerDbm, moreDb) =>
            {
                double weak = Published.Voltage(Decibels.DbmToPower(powerDbm));
                double strong = Published.Voltage(Decibels.DbmToPower(powerDbm + moreDb));
                return weak >= 0.0 && strong >= weak;
            });

        [Theory]
        [InlineData(-1e-9)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_power_that_is_negative_or_not_finite(double power) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => Published.Voltage(power));

        [Fact]
        public void Allocates_nothing()
        {
            Published.Voltage(1e-5);
            long before = GC.GetAllocatedBytesForCurrentThread();
            double sum = 0.0;
            for (int i = 0; i < 1000; i++)
            {
                sum += Published.Voltage(i * 1e-6);
            }

            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
            Assert.True(sum > 0.0);
        }
    }

    public sealed class Power
    {
        [Fact]
        public void Undoes_the_voltage() =>
            Gen.Select(Gen.Double[-90.0, 30.0], Gen.Bool).Sample((powerDbm, published) =>
            {
                DiodeDetector detector = published ? Published : Balanced;
                double power = Decibels.DbmToPower(powerDbm);
                double voltage = detector.Voltage(power);
                if (voltage > 1e-7)
                {
                    Close.Relative(power, detector.Power(voltage), 1e-9);
                }
            });

        [Fact]
        public void Of_no_voltage_is_none() => Assert.Equal(0.0, Published.Power(0.0));
    }

    public sealed class CapacitanceFactor
    {
        [Fact]
        public void Is_one_without_a_frequency() => Assert.Equal(1.0, Published.CapacitanceFactor);

        [Fact]
        public void Is_a_half_where_the_reactance_equals_the_resistance()
        {
            // derived: 1/(ωC) = R_g + R_s = 75 Ω with C = 0.18 pF at 11.789 GHz
            double frequency = 1.0 / (2.0 * Math.PI * 0.18e-12 * 75.0);
            Close.Relative(0.5, new DiodeDetector(Diode.Hsms285x, frequency).CapacitanceFactor, 1e-12);
        }

        [Fact]
        public void Acts_like_less_power()
        {
            DiodeDetector fast = new(Diode.Hsms285x, 10e9);
            DiodeDetector slow = new(Diode.Hsms285x, 0.0);
            Close.Relative(slow.Voltage(1e-5 * fast.CapacitanceFactor), fast.Voltage(1e-5), 1e-12);
        }
    }

    public sealed class TrustedPower
    {
        [Fact]
        public void Begins_where_the_constant_term_takes_half_a_decibel() =>
            // derived: to first order V ∝ P − P0, so that half a decibel is gone at P0/(1 − 10^−0.05), −37.3 dBm here; the remaining
            // 0.04 dB are the curvature of ln I0 at x = 0.3
            Close.Absolute(
                -0.5,
                Decibels.FromRatio(Published.Voltage(Published.TrustedPower.Lowest) / Balanced.Voltage(Published.TrustedPower.Lowest)),
                0.02);

        [Fact]
        public void Begins_at_nothing_without_it() => Assert.Equal(0.0, Balanced.TrustedPower.Lowest);

        // derived: a small wave is divided between R_g + R_s and R_j, and the voltage goes as its square: 20 log10(1 + (R_g+R_s)/R_j) is
        // what the law reads too much. Independent method: the circuit solved in time.
        [Theory]
        [InlineData(50.0, 0.071)]
        [InlineData(1000.0, 0.924)]
        [InlineData(9114.0, 6.023)]
        public void A_source_that_is_not_small_beside_the_junction_is_read_too_strong(double sourceResistance, double expectedDb)
        {
            DiodeDetector detector = Balanced with { SourceResistance = sourceResistance };
            double power = 1e-9 * 50.0 / sourceResistance;
            Close.Absolute(expectedDb, Decibels.FromRatio(detector.Voltage(power) / DiodeCircuit.Voltage(detector, power)), 2e-3);
        }

        // Independent method: the same circuit. The first harmonic of the current alone is counted, which is not enough where the source is
        // as high as the junction: there 0.83 dB are left.
        [Theory]
        [InlineData(600.0, 0.52)]
        [InlineData(1000.0, 0.52)]
        [InlineData(9000.0, 0.84)]
        public void Begins_where_such_a_source_costs_about_half_a_decibel(double sourceResistance, double mostDb)
        {
            DiodeDetector detector = Balanced with { SourceResistance = sourceResistance };
            double power = detector.TrustedPower.Lowest;
            Assert.InRange(Decibels.FromRatio(detector.Voltage(power) / DiodeCircuit.Voltage(detector, power)), 0.4, mostDb);
        }

        [Fact]
        public void Ends_at_half_the_breakdown_voltage() =>
            // [Agilent1999]: B_v 3.8 V
            Close.Relative(1.9, Published.Voltage(Published.TrustedPower.Highest), 1e-9);
    }

    public sealed class VideoResistance
    {
        [Fact]
        public void Is_that_of_the_junction_with_its_series_resistance_and_load()
        {
            DiodeDetector unloaded = Published with { Temperature = 298.0, LoadResistance = 1e12 };
            // derived: n k T/(q I_s) + R_s = 1.06 × 0.0256796 V / 3 µA + 25 Ω
            Close.Relative(9073.4 + 25.0, unloaded.VideoResistance, 1e-4);
            Close.Relative(0.5 * unloaded.VideoResistance, (unloaded with { LoadResistance = 9073.4 + 25.0 }).VideoResistance, 1e-4); // law: as much in parallel
        }
    }

    public sealed class Settings
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(-50.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Reject_a_resistance_that_is_not_finite_and_positive(double resistance)
        {
            ArgumentOutOfRangeException source =
                Assert.Throws<ArgumentOutOfRangeException>(() => Published with { SourceResistance = resistance });
            Assert.StartsWith("SourceResistance = ", source.Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentOutOfRangeException>(() => Published with { LoadResistance = resistance });
            Assert.Throws<ArgumentOutOfRangeException>(() => Published with { Temperature = resistance });
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(1.01)]
        [InlineData(double.NaN)]
        public void Reject_a_mount_that_gives_nothing_or_more_than_it_gets(double efficiency) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => Published with { MountEfficiency = efficiency });
    }
}
