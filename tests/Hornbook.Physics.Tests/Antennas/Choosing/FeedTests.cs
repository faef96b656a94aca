using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class FeedTests
{
    [Theory]
    [InlineData(6.5e9)]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_frequency_that_the_guide_does_not_carry_is_refused_with_the_cutoff(double frequency)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new Feed(Feeds.Bench.Guide, frequency, Feeds.Bench.Walls));

        // c/(2 × 22.86 mm) = 6.55714 GHz.
        Assert.Contains("the guide carries a wave only above its cut-off, 6.55714E+09 Hz", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("frequency", refusal.ParamName);
    }

    [Fact]
    public void The_least_gain_is_that_of_the_open_guide() =>
        Close.Relative(Antenna.At(new OpenGuide(Feeds.Bench.Guide, Feeds.Bench.Walls), 10.525e9).Gain, Feeds.Bench.OpenGuideGain, 1e-14);
}
