using CsCheck;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

public sealed class FarZoneTests
{
    [Theory]
    // Derived from the definition, IEEE Std 149: R λ/D², edge phase in degrees, then dB of a uniform line, cosine line, uniform square and uniform disc.
    [InlineData(0.25, 180.0, -4.037, -1.748, -8.074, -3.922)]
    [InlineData(0.5, 90.0, -0.967, -0.454, -1.935, -0.912)]
    [InlineData(1.0, 45.0, -0.239, -0.1145, -0.478, -0.224)]
    [InlineData(2.0, 22.5, -0.0596, -0.0287, -0.119, -0.0559)]
    [InlineData(4.0, 11.25, -0.0149, -0.0072, -0.030, -0.0140)]
    public void A_mouth_in_phase_measured_too_near_seems_weaker(
        double distance, double edgeDeg, double lineDb, double cosineDb, double squareDb, double discDb)
    {
        double phase = FarZone.EdgePhase(1.0, 1.0, distance);
        Close.Absolute(edgeDeg, phase * 180.0 / Math.PI, 1e-9);

        // Printed to three or four decimals.
        double line = FarZone.LineFactor(LineTaper.Uniform, phase);
        Close.Absolute(lineDb, Decibels.FromRatio(line), 0.00051);
        Close.Absolute(cosineDb, Decibels.FromRatio(FarZone.LineFactor(LineTaper.Cosine, phase)), 0.00051);
        Close.Absolute(squareDb, Decibels.FromRatio(line * line), 0.00051);
        Close.Absolute(discDb, Decibels.FromRatio(FarZone.DiscFactor(0, phase)), 0.00051);
    }

    [Theory]
    // Derived likewise: discs whose field goes as 1 − r² and (1 − r²)².
    [InlineData(1.0, -0.149, -0.100)]
    [InlineData(2.0, -0.037, -0.025)]
    [InlineData(4.0, -0.009, -0.006)]
    public void A_tapered_disc_loses_less(double distance, double onceDb, double twiceDb)
    {
        double phase = FarZone.EdgePhase(1.0, 1.0, distance);
        Close.Absolute(onceDb, Decibels.FromRatio(FarZone.DiscFactor(1, phase)), 0.00051);
        Close.Absolute(twiceDb, Decibels.FromRatio(FarZone.DiscFactor(2, phase)), 0.00051);
    }

    [Fact]
    public void A_uniform_disc_at_2D2_over_wave()
    {
        // J. S. Hollis, T. J. Lyon, L. Clayton, Microwave Antenna Measurements, from memory: 0.06 dB low; (sin(π/16)/(π/16))² = 0.0559 dB.
        double phase = FarZone.EdgePhase(0.3, 0.03, FarZone.Begins(0.3, 0.03));
        Close.Relative(Math.PI / 8.0, phase, 1e-12);
        Close.Absolute(-0.0559, Decibels.FromRatio(FarZone.DiscFactor(0, phase)), 0.5e-4);
    }

    [Fact]
    public void A_uniform_disc_has_its_closed_form() => Gen.Double[1e-3, 600.0].Sample(phase =>
        Close.Absolute(Math.Pow(Math.Sin(phase / 2.0) / (phase / 2.0), 2.0), FarZone.DiscFactor(0, phase), 1e-12));

    [Theory]
    // Derived from the definition with λ = c/10 GHz; "about 67 m" for a metre in teaching notes.
    [InlineData(0.2, 2.668)]
    [InlineData(1.0, 66.71)]
    public void Begins_at(double size, double expected) => Close.Relative(expected, FarZone.Begins(size, 0.0299792458), 2e-4);

    [Fact]
    public void At_half_the_distance_the_edge_lags_by_45_degrees() =>
        Close.Relative(Math.PI / 4.0, FarZone.EdgePhase(0.2, 0.03, 0.5 * FarZone.Begins(0.2, 0.03)), 1e-12);

    [Fact]
    public void The_reactive_zone_ends_at() =>
        // Balanis, Antenna Theory, ch. 2: 0.62 √(D³/λ); D = 0.2 m, λ = 0.03 m: 0.62 √(0.008/0.03) = 0.32017 m.
        Close.Absolute(0.32017, FarZone.ReactiveZoneEnds(0.2, 0.03), 1e-5);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_that_is_none_is_refused(double wrong)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FarZone.Begins(wrong, 1.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FarZone.Begins(1.0, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => FarZone.EdgePhase(1.0, 1.0, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => FarZone.ReactiveZoneEnds(1.0, wrong));
    }
}
