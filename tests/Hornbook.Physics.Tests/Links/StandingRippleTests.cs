using Hornbook.Physics.Antennas;
using Hornbook.Physics.Links;
using Hornbook.Physics.Tests.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Links;

public sealed class StandingRippleTests
{
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    public void Facing_horns_ripple_as_the_full_wave_comparison_found(double distance)
    {
        // 0.2 to 0.4 dB standard deviation between 0.1 and 0.5 m; a sine of half width h has the standard deviation h/√2.
        Antenna horn = Antenna.At(SampleAntennas.TableHorn, 10e9);
        Assert.InRange(StandingRipple.HalfWidthDb(horn, horn, distance) / Math.Sqrt(2.0), 0.1, 0.4);
    }

    [Fact]
    public void It_falls_with_the_square_of_the_distance_to_a_floor()
    {
        Antenna horn = Antenna.At(SampleAntennas.TableHorn, 10e9);
        double floor = StandingRipple.Amplitude(horn, horn, 1e6);
        // Derived: two patches far apart, each spreading as 1/R.
        Close.Relative(0.25, (StandingRipple.Amplitude(horn, horn, 4.0) - floor) / (StandingRipple.Amplitude(horn, horn, 2.0) - floor), 1e-6);
        Close.Absolute(0.01, floor, 1e-6);
    }

    [Fact]
    public void An_open_end_throws_back_less_than_a_horn()
    {
        Antenna horn = Antenna.At(SampleAntennas.TableHorn, 10e9), open = Antenna.At(SampleAntennas.OpenWr90, 10e9);
        Assert.True(StandingRipple.HalfWidthDb(horn, open, 0.4) < StandingRipple.HalfWidthDb(horn, horn, 0.4));
    }
}
