using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class BuildSpreadTests
{
    private const double Frequency = 10.525e9;

    private static readonly Horn Drawn = new(Feeds.Bench.Guide, 0.098, 0.076, 0.09, Feeds.Bench.Walls);

    [Theory]
    [InlineData(ErrorLaw.Uniform, 0.57735)]
    [InlineData(ErrorLaw.Normal, 0.51020)]
    public void Small_errors_add_as_squares(ErrorLaw law, double deviationOverTolerance)
    {
        // Law of propagation (JCGM 100): u² = Σ (∂f/∂x · u_x)², u_x = tolerance/√3 for the uniform law and tolerance/1.96 for the normal one. With 0.1 mm
        // the figures are linear in the errors; 400 trials give the deviation to 1/√800 = 3.5 %, so 4 of these are allowed.
        const double Tolerance = 0.1e-3;
        BuildSpread spread = BuildSpread.Of(Drawn, Frequency, new BuildTolerance(Tolerance), law, new Random(7), trials: 400);
        IReadOnlyList<BuildError> each = BuildError.Each(Drawn, Frequency, new BuildTolerance(Tolerance));
        Close.Relative(deviationOverTolerance * Root(each, f => f.Gain), spread.Gain.StandardDeviation, 0.14);
        Close.Relative(deviationOverTolerance * Root(each, f => f.HalfPowerWidthE!.Value), spread.HalfPowerWidthE!.StandardDeviation, 0.14);
        Close.Relative(deviationOverTolerance * Root(each, f => f.HalfPowerWidthH!.Value), spread.HalfPowerWidthH!.StandardDeviation, 0.14);
    }

    [Fact]
    public void The_interval_holds_95_of_100_pieces()
    {
        BuildSpread spread = BuildSpread.Of(Drawn, Frequency, new BuildTolerance(1e-3), ErrorLaw.Normal, new Random(3), trials: 300);
        Random again = new(3);
        int inside = 0;
        for (int i = 0; i < 150; i++)
        {
            BuildSpread pair = BuildSpread.Of(Drawn, Frequency, new BuildTolerance(1e-3), ErrorLaw.Normal, again, trials: 2);

            // The two pieces of a pair are mean ± half their distance: mean ± deviation/√2.
            double half = pair.Gain.StandardDeviation / Math.Sqrt(2.0);
            inside += new[] { pair.Gain.Mean - half, pair.Gain.Mean + half }.Count(gain => gain >= spread.Gain.Lower && gain <= spread.Gain.Upper);
        }

        // Binomial, 300 pieces: 95 % ± 1.3 %, and the ends of the interval are uncertain by as much again.
        Assert.InRange(inside / 300.0, 0.90, 0.99);
    }

    [Fact]
    public void The_same_seed_gives_the_same_spread() =>
        Assert.Equal(
            BuildSpread.Of(Drawn, Frequency, new BuildTolerance(1e-3), ErrorLaw.Uniform, new Random(5), 20),
            BuildSpread.Of(Drawn, Frequency, new BuildTolerance(1e-3), ErrorLaw.Uniform, new Random(5), 20));

    [Fact]
    public void A_perfect_builder_has_no_spread()
    {
        BuildSpread spread = BuildSpread.Of(Drawn, Frequency, new BuildTolerance(0.0), ErrorLaw.Uniform, new Random(1), 3);
        double gain = HornFigures.Of(Drawn, Frequency).Gain;
        Close.Absolute(0.0, spread.Gain.StandardDeviation, 1e-12);
        Close.Relative(gain, spread.Gain.Lower, 1e-12);
        Close.Relative(gain, spread.Gain.Upper, 1e-12);
    }

    [Fact]
    public void A_horn_without_a_half_power_width_has_no_spread_of_it()
    {
        // Near cut-off β/k is small, so that the mouth radiates to the side almost as well as ahead: (1 + β/k)² < 2.
        const double NearCutoff = 6.7e9;
        Horn sectoral = new(Feeds.Bench.Guide, Feeds.Bench.Guide.Width, 0.012, 0.05, Feeds.Bench.Walls);
        Assert.Null(HornFigures.Of(sectoral, NearCutoff).HalfPowerWidthE);
        Assert.Null(BuildSpread.Of(sectoral, NearCutoff, new BuildTolerance(0.5e-3), ErrorLaw.Uniform, new Random(1), 5).HalfPowerWidthE);
    }

    private static double Root(IReadOnlyList<BuildError> each, Func<HornFigures, double> figure) =>
        Math.Sqrt(each.Sum(error => Math.Pow(0.5 * (figure(error.Larger) - figure(error.Smaller)), 2.0)));
}
