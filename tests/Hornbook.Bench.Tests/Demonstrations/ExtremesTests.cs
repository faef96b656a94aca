using Hornbook.Bench.Demonstrations;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class ExtremesTests
{
    private static readonly double[] At = [.. Moves.Evenly(0.0, 10.0, 101)];

    private static readonly double[] Waves = [.. At.Select(Math.Sin)];

    [Fact]
    public void Finds_every_hill_and_valley_between_the_ends()
    {
        // derived: sin is level at odd multiples of π/2; a cubic spline over steps of 0.1 is good to 1e-5.
        double[] hills = Extremes.Maxima(At, Waves), valleys = Extremes.Minima(At, Waves);
        Assert.Equal((2, 1), (hills.Length, valleys.Length));
        Close.Absolute(0.5 * Math.PI, hills[0], 1e-5);
        Close.Absolute(2.5 * Math.PI, hills[1], 1e-5);
        Close.Absolute(1.5 * Math.PI, valleys[0], 1e-5);
    }

    [Fact]
    public void The_ends_of_a_slope_are_neither() => Assert.Equal((0, 0), (Extremes.Maxima(At, At).Length, Extremes.Minima(At, At).Length));
}
