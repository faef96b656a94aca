using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class HornFiguresTests
{
    private static readonly Gen<Horn> AnyHorn = Gen.Select(Gen.Double[0.03, 0.13], Gen.Double[0.02, 0.12], Gen.Double[0.03, 0.2])
        .Select((width, height, length) => new Horn(Feeds.Bench.Guide, width, height, length, Conductor.Brass));

    [Fact]
    public void Are_those_of_the_exact_antenna() => AnyHorn.Sample(
        horn =>
        {
            // Independent way: the general antenna sums its currents over the whole sphere. It takes three points a wavelength over the mouth and these
            // figures four and more, which leaves 1.1e-4 (5e-4 dB) where a mouth of 119 mm sits on a flare of 31 mm, and far less elsewhere.
            Antenna antenna = Antenna.At(horn, 10.525e9);
            HornFigures figures = HornFigures.Of(horn, 10.525e9);
            Close.Relative(antenna.Gain, figures.Gain, 2e-4);
            Agrees(BeamShape.Of(antenna, PatternPlane.Electric).HalfPowerWidth, figures.HalfPowerWidthE);
            Agrees(BeamShape.Of(antenna, PatternPlane.Magnetic).HalfPowerWidth, figures.HalfPowerWidthH);
        },
        iter: 6);

    [Fact]
    public void Agree_to_rounding_once_the_antenna_has_points_enough()
    {
        Horn horn = new(Feeds.Bench.Guide, 0.06, 0.05, 0.05, Conductor.Brass);
        Antenna antenna = Antenna.At(horn, 10.525e9, refinement: 2.0);
        HornFigures figures = HornFigures.Of(horn, 10.525e9);
        Close.Relative(antenna.Gain, figures.Gain, 1e-9);
        Agrees(BeamShape.Of(antenna, PatternPlane.Electric).HalfPowerWidth, figures.HalfPowerWidthE, 1e-9);
        Agrees(BeamShape.Of(antenna, PatternPlane.Magnetic).HalfPowerWidth, figures.HalfPowerWidthH, 1e-9);
    }

    [Fact]
    public void A_horn_is_rounded_to_what_a_workshop_can_hold()
    {
        HornFigures wished = HornWish.ForGain(Feeds.Bench, Decibels.ToRatio(16.6)).Figures!;
        HornFigures cut = wished.Rounded(0.5e-3);
        foreach (double size in new[] { cut.Horn.MouthWidth, cut.Horn.MouthHeight, cut.Horn.Length })
        {
            Close.Absolute(0.0, Math.IEEERemainder(size, 0.5e-3), 1e-12);
        }

        Assert.Equal(HornFigures.Of(cut.Horn, cut.Frequency), cut);

        // A quarter of a millimetre at most in each dimension; the length counts most, 0.055 dB a millimetre (derived by differences).
        Close.Absolute(16.6, Decibels.FromRatio(cut.Gain), 0.02);
    }

    [Fact]
    public void Rounding_leaves_a_side_that_does_not_flare()
    {
        Horn sectoral = new(Feeds.Bench.Guide, Feeds.Bench.Guide.Width, 0.0603, 0.1002, Conductor.Brass);
        Horn cut = HornFigures.Of(sectoral, 10.525e9).Rounded(1e-3).Horn;
        Close.Relative(sectoral.Guide.Width, cut.MouthWidth, 1e-15);
        Close.Absolute(0.0, Math.IEEERemainder(cut.MouthHeight, 1e-3), 1e-12);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1e-3)]
    [InlineData(double.NaN)]
    [InlineData(1.0)]
    public void A_step_that_leaves_no_horn_is_refused(double step) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            HornFigures.Of(new Horn(Feeds.Bench.Guide, 0.06, 0.05, 0.1, Conductor.Brass), 10.525e9).Rounded(step));

    [Fact]
    public void Below_cutoff_there_are_none() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HornFigures.Of(new Horn(Feeds.Bench.Guide, 0.05, 0.04, 0.05, Conductor.Brass), 6.5e9));

    private static void Agrees(double? expected, double? actual, double relative = 2e-4)
    {
        Assert.Equal(expected.HasValue, actual.HasValue);
        if (expected.HasValue)
        {
            Close.Relative(expected.Value, actual!.Value, relative);
        }
    }
}
