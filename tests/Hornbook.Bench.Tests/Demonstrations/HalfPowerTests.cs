using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class HalfPowerTests
{
    [Fact]
    public void Reads_a_cosine_squared_beam_as_ninety_degrees_wide()
    {
        // cos²θ = ½ at θ = ±45°, derived; the spline's own error at steps of 2° stays below 1e-5.
        double[] angles = Angles(-80.0, 80.0, 81);
        HalfPower read = HalfPower.Of(angles, [.. angles.Select(a => Math.Pow(Math.Cos(a), 2.0))]);
        Close.Absolute(0.0, read.PeakAt, 1e-7);
        Close.Absolute(Math.PI / 2.0, read.Width!.Value, 1e-5);
    }

    [Fact]
    public void Reads_a_bell_exactly_wherever_it_stands_and_whichever_way_it_is_swept()
    {
        // A bell exp(−(θ−θ₀)²/w²) is a parabola in decibels; its half-power width is 2w √ln 2, derived. The natural ends of the
        // spline, far from the crossing, cost 1e-6.
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[0.15, 0.4], Gen.Bool).Sample((at, width, backwards) =>
        {
            double[] angles = Angles(-70.0, 70.0, 71);
            double[] swept = backwards ? [.. angles.Reverse()] : angles;
            HalfPower read = HalfPower.Of(swept, [.. swept.Select(a => Math.Exp(-Math.Pow((a - at) / width, 2.0)))]);
            Close.Absolute(at, read.PeakAt, 1e-5);
            Close.Absolute(2.0 * width * Math.Sqrt(Math.Log(2.0)), read.Width!.Value, 1e-5);
        });
    }

    [Theory]
    [InlineData(-40.0, 60.0)]
    [InlineData(0.0, 60.0)]
    [InlineData(-30.0, 30.0)]
    public void Has_no_width_where_the_sweep_misses_a_half_power_point(double from, double to)
    {
        double[] angles = Angles(from, to, 41);
        Assert.Null(HalfPower.Of(angles, [.. angles.Select(a => Math.Pow(Math.Cos(a), 2.0))]).Width);
    }

    [Fact]
    public void A_power_of_nothing_does_not_upset_it()
    {
        double[] angles = Angles(-90.0, 90.0, 61);
        double[] powers = [.. angles.Select(a => Math.Abs(a) > 1.5 ? 0.0 : Math.Pow(Math.Cos(a), 2.0))];
        Close.Absolute(Math.PI / 2.0, HalfPower.Of(angles, powers).Width!.Value, 1e-3);
    }

    private static double[] Angles(double fromDeg, double toDeg, int points) =>
        [.. Enumerable.Range(0, points).Select(i => (fromDeg + ((toDeg - fromDeg) * i / (points - 1))) * GoodBench.Degree)];
}
