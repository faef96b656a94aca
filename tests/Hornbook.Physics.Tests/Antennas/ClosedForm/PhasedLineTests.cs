using System.Numerics;
using CsCheck;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Testing;
using MathNet.Numerics.RootFinding;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

public sealed class PhasedLineTests
{
    private static PhasedLine Uniform(double q) => new(LineTaper.Uniform, q);

    private static PhasedLine Cosine(double q) => new(LineTaper.Cosine, q);

    public sealed class AxialFactor
    {
        [Theory]
        // Derived: Schelkunoff's closed form with Fresnel integrals (S. A. Schelkunoff, 1943; Balanis, Antenna Theory, ch. 13), to four decimals of a dB.
        [InlineData(0.01, -0.0015, -0.0007)]
        [InlineData(0.04, -0.0244, -0.0117)]
        [InlineData(0.0625, -0.0596, -0.0287)]
        [InlineData(0.10, -0.1528, -0.0733)]
        [InlineData(0.125, -0.2391, -0.1145)]
        [InlineData(0.15, -0.3448, -0.1647)]
        [InlineData(0.20, -0.6157, -0.2919)]
        [InlineData(0.25, -0.9674, -0.4543)]
        [InlineData(0.30, -1.4025, -0.6511)]
        [InlineData(0.375, -2.2181, -1.0074)]
        [InlineData(0.40, -2.5350, -1.1417)]
        [InlineData(0.50, -4.0369, -1.7481)]
        public void In_decibels(double q, double uniformDb, double cosineDb)
        {
            Close.Absolute(uniformDb, Decibels.FromRatio(Uniform(q).AxialFactor), 0.51e-4);
            Close.Absolute(cosineDb, Decibels.FromRatio(Cosine(q).AxialFactor), 0.51e-4);
        }

        [Fact]
        public void Equals_the_form_with_Fresnel_integrals() => Gen.Double[0.02, 1.0].Sample(q =>
        {
            Close.Relative(FresnelSeries.FactorE(q), Uniform(q).AxialFactor, 1e-9);

            // The textbook form of the H plane subtracts nearly equal numbers and loses digits of its own.
            Close.Relative(FresnelSeries.FactorH(q), Cosine(q).AxialFactor, 1e-7);
        });

        [Fact]
        public void Of_a_line_in_phase_is_one()
        {
            Close.Absolute(1.0, Uniform(0.0).AxialFactor, 1e-14);
            Close.Absolute(1.0, Cosine(0.0).AxialFactor, 1e-14);
        }

        [Theory]
        // The far edge of the legal range. Derived: for a long phase the uniform line tends to 1/(8q), by C, S → 1/2 with a ripple of about 2/(π√(2q)).
        [InlineData(99.0)]
        [InlineData(60.0)]
        [InlineData(21.0)]
        [InlineData(7.0)]
        public void Of_many_waves_of_lag_tends_to_that_of_the_full_Fresnel_zones(double q) =>
            Close.Relative(1.0 / (8.0 * q), Uniform(q).AxialFactor, 2.0 / (Math.PI * Math.Sqrt(2.0 * q)));

        [Fact]
        public void Has_digits_enough_at_every_order_of_the_rule()
        {
            // Independent: composite Simpson rule with 20 000 panels, whose error here is below 1e-9.
            foreach (double q in new[] { 0.3, 1.5, 1.7, 5.0, 6.0, 13.0, 14.0, 31.0, 33.0, 66.0, 69.0, 100.0 })
            {
                Close.Absolute(Simpson(q), Math.Sqrt(Cosine(q).AxialFactor), 1e-8);
            }
        }

        private static double Simpson(double q)
        {
            const int N = 40_000;
            Complex sum = Complex.Zero;
            for (int i = 0; i <= N; i++)
            {
                double x = -1.0 + (2.0 * i / N);
                double weight = i == 0 || i == N ? 1.0 : (i % 2 == 0 ? 2.0 : 4.0);
                sum += Complex.FromPolarCoordinates(weight * Math.Cos(0.5 * Math.PI * x), -2.0 * Math.PI * q * x * x);
            }

            return (sum * (2.0 / (3.0 * N)) * (Math.PI / 4.0)).Magnitude;
        }
    }

    public sealed class HalfPowerWidth
    {
        [Theory]
        // W. L. Stutzman, G. A. Thiele, Antenna Theory and Design: 0.94 λ/B = 54° λ/B and 1.36 λ/A = 78° λ/A for the optimum horn; to more digits
        // derived from the same integral: 53.88° and 77.90°. In phase 50.76° (uniform) and 68.12° (cosine), handbooks 51° and 68° to 69°.
        [InlineData(LineTaper.Uniform, 0.25, 53.88)]
        [InlineData(LineTaper.Cosine, 0.375, 77.90)]
        [InlineData(LineTaper.Uniform, 0.0, 50.76)]
        [InlineData(LineTaper.Cosine, 0.0, 68.12)]
        public void In_degrees_times_waves(LineTaper taper, double q, double expectedDeg) =>
            Close.Absolute(expectedDeg, new PhasedLine(taper, q).HalfPowerWidth!.Value * 180.0 / Math.PI, 0.1);

        [Fact]
        public void At_its_edge_the_power_is_half() => Gen.Select(Gen.Enum<LineTaper>(), Gen.Double[0.0, 0.6]).Sample((taper, q) =>
        {
            PhasedLine line = new(taper, q);
            Complex edge = line.Pattern(0.5 * Math.PI * line.HalfPowerWidth!.Value);
            Close.Relative(0.5, edge.Magnitude * edge.Magnitude / line.AxialFactor, 1e-9);
        });

        [Fact]
        public void Does_not_exist_where_the_axis_is_a_dip() =>
            // One full wave of lag: the uniform line's middle and rim cancel, and the beam is split.
            Assert.Null(Uniform(1.0).HalfPowerWidth);
    }

    public sealed class PhaseCentreShare
    {
        [Theory]
        // T. A. Milligan, Modern Antenna Design (2005), table of horn phase centres, from memory (0.0054/0.011 … 0.191/0.416), to four digits derived.
        [InlineData(0.04, 0.0112, 0.0054)]
        [InlineData(0.08, 0.0451, 0.0216)]
        [InlineData(0.12, 0.1018, 0.0485)]
        [InlineData(0.16, 0.1820, 0.0859)]
        [InlineData(0.20, 0.2864, 0.1335)]
        [InlineData(0.24, 0.4159, 0.1911)]
        [InlineData(0.28, 0.5718, 0.2580)]
        public void As_in_the_table(double q, double uniform, double cosine)
        {
            Close.Absolute(uniform, Uniform(q).PhaseCentreShare, 0.51e-4);
            Close.Absolute(cosine, Cosine(q).PhaseCentreShare, 0.51e-4);
        }

        [Fact]
        public void Of_the_optimum_horn_nearly_agrees_in_both_planes()
        {
            // Derived with the same average: 0.4524 and 0.4508.
            Close.Absolute(0.4524, Uniform(0.25).PhaseCentreShare, 0.51e-4);
            Close.Absolute(0.4508, Cosine(0.375).PhaseCentreShare, 0.51e-4);
        }

        [Fact]
        public void Is_how_fast_the_loss_grows() => Gen.Select(Gen.Enum<LineTaper>(), Gen.Double[0.05, 0.5]).Sample((taper, q) =>
        {
            // Law: differentiating F under the integral gives ℓ/ρ = −q d(ln R)/dq. Central difference, error of the order (1e-4)².
            double slope = Math.Log(new PhasedLine(taper, q + 1e-4).AxialFactor / new PhasedLine(taper, q - 1e-4).AxialFactor) / 2e-4;
            Close.Relative(-q * slope, new PhasedLine(taper, q).PhaseCentreShare, 1e-5);
        });

        [Theory]
        // Derived: at a fixed length the gain goes as √q R(q), whose maximum is where ℓ/ρ = 1/2: s = 0.2624, t = 0.3965.
        [InlineData(LineTaper.Uniform, 0.2624)]
        [InlineData(LineTaper.Cosine, 0.3965)]
        public void Is_one_half_in_the_horn_of_highest_gain_for_its_length(LineTaper taper, double expected)
        {
            double best = Brent.FindRoot(q => new PhasedLine(taper, q).PhaseCentreShare - 0.5, 0.1, 0.45, 1e-12);
            Close.Absolute(expected, best, 0.51e-4);
            Assert.True(Gain(best) > Gain(best - 1e-3) && Gain(best) > Gain(best + 1e-3));

            double Gain(double q) => Math.Sqrt(q) * new PhasedLine(taper, q).AxialFactor;
        }
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_phase_out_of_range_is_refused(double q) => Assert.Throws<ArgumentOutOfRangeException>(() => Uniform(q));

    [Fact]
    public void The_quadratic_phase_is_near_enough_to_the_spherical_one()
    {
        // E. V. Jull, Electronics Letters 6 (1970), abstract: the two are "equal" for mouths above 50 λ or with less than 0.2 waves of lag.
        // Derived: for A = 50 λ, T = 1 they differ by 0.007 dB in the H plane and 0.010 dB in the E plane; for A = 5 λ, T = 0.2 by 0.001 dB in both.
        Close.Absolute(0.007, Difference(LineTaper.Cosine, 50.0, 1.0), 0.005);
        Close.Absolute(0.010, Difference(LineTaper.Uniform, 50.0, 1.0), 0.005);
        Close.Absolute(0.001, Difference(LineTaper.Cosine, 5.0, 0.2), 0.005);
        Close.Absolute(0.001, Difference(LineTaper.Uniform, 5.0, 0.2), 0.005);

        static double Difference(LineTaper taper, double side, double lag) =>
            Math.Abs(Decibels.FromRatio(Spherical(taper, side, lag) / new PhasedLine(taper, lag).AxialFactor));
    }

    // The lag √(ρ² + y²) − ρ instead of y²/2ρ, sides in waves, midpoint rule; ρ such that the lag at the edge is the same.
    private static double Spherical(LineTaper taper, double side, double lag)
    {
        double half = 0.5 * side, radius = ((half * half) - (lag * lag)) / (2.0 * lag);
        const int N = 20_000;
        Complex sum = Complex.Zero;
        double whole = 0.0;
        for (int i = 0; i < N; i++)
        {
            double x = -1.0 + ((2.0 * i) + 1.0) / N;
            double strength = taper == LineTaper.Uniform ? 1.0 : Math.Cos(0.5 * Math.PI * x), y = half * x;
            whole += strength;
            sum += Complex.FromPolarCoordinates(strength, -2.0 * Math.PI * (Math.Sqrt((radius * radius) + (y * y)) - radius));
        }

        return Math.Pow(sum.Magnitude / whole, 2.0);
    }
}
