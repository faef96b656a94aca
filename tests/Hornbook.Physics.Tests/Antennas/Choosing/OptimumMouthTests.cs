using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Antennas.ClosedForm;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using MathNet.Numerics;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class OptimumMouthTests
{
    private static double ClosedGain(Horn horn) => FlaredMouth.Of(horn).Directivity(Feeds.Bench.Wavelength);

    [Fact]
    public void No_other_mouth_of_that_length_has_more_gain_in_closed_form() =>
        Gen.Select(Gen.Double[0.03, 0.6], Gen.Double[-0.03, 0.03], Gen.Double[-0.03, 0.03]).Sample((length, wider, higher) =>
        {
            Horn best = OptimumMouth.ForLength(Feeds.Bench, length);
            Horn other = new(best.Guide, best.MouthWidth * (1.0 + wider), best.MouthHeight * (1.0 + higher), length, best.Walls);
            Assert.True(ClosedGain(other) <= ClosedGain(best) * (1.0 + 1e-12));
        });

    [Fact]
    public void Both_flares_begin_at_one_throat() => Gen.Double[0.03, 0.6].Sample(length =>
    {
        // Law: ρ_E (1 − b/B) = ρ_H (1 − a/A) = L.
        Horn horn = OptimumMouth.ForLength(Feeds.Bench, length);
        Close.Relative(length, horn.AxialRadiusE * (1.0 - (horn.Guide.Height / horn.MouthHeight)), 1e-12);
        Close.Relative(length, horn.AxialRadiusH * (1.0 - (horn.Guide.Width / horn.MouthWidth)), 1e-12);
    });

    [Theory]
    [InlineData(1.5, 0.05)]
    [InlineData(3.0, 0.01)]
    public void Costs_little_against_the_best_mouth_of_the_exact_field(double lengthInWaves, double mostDb)
    {
        // Independent way: the exact gain climbed by a simplex, started from this mouth.
        Horn horn = OptimumMouth.ForLength(Feeds.Bench, lengthInWaves * Feeds.Bench.Wavelength);
        double Loss(double width, double height) => -Decibels.FromRatio(HornFigures.Of(
            new Horn(horn.Guide, Math.Max(width, horn.Guide.Width), Math.Max(height, horn.Guide.Height), horn.Length, horn.Walls), Feeds.Bench.Frequency).Gain);
        (double bestWidth, double bestHeight) = FindMinimum.OfFunction(Loss, horn.MouthWidth, horn.MouthHeight, 1e-6, 200);
        double gainDb = Loss(horn.MouthWidth, horn.MouthHeight) - Loss(bestWidth, bestHeight);
        Assert.InRange(gainDb, 0.0, mostDb);
    }

    [Fact]
    public void Of_a_long_horn_on_a_tiny_guide_has_the_lags_of_the_free_optimum()
    {
        // Derived: the maxima of √q R(q) are s = 0.2624 and t = 0.3965; the throat shifts them by about d/W < 1e-3 here.
        Feed feed = new(new RectangularGuide(0.0151, 0.001), 10e9, Conductor.Brass);
        Horn horn = OptimumMouth.ForLength(feed, 40.0 * feed.Wavelength);
        Close.Absolute(0.2624, horn.MouthHeight * horn.MouthHeight / (8.0 * feed.Wavelength * horn.AxialRadiusE), 2e-3);
        Close.Absolute(0.3965, horn.MouthWidth * horn.MouthWidth / (8.0 * feed.Wavelength * horn.AxialRadiusH), 1e-2);
    }

    [Fact]
    public void Closed_it_is_the_guide_itself()
    {
        Horn horn = OptimumMouth.ForLength(Feeds.Bench, 0.05, openness: 0.0);
        Close.Relative(horn.Guide.Width, horn.MouthWidth, 1e-14);
        Close.Relative(horn.Guide.Height, horn.MouthHeight, 1e-14);
    }

    [Theory]
    [InlineData(0.0, 1.0)]
    [InlineData(double.NaN, 1.0)]
    [InlineData(0.1, -0.1)]
    [InlineData(0.1, 1.1)]
    public void A_number_out_of_range_is_refused(double length, double openness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OptimumMouth.ForLength(Feeds.Bench, length, openness));
}
