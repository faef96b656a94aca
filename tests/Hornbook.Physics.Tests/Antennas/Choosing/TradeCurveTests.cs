using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class TradeCurveTests
{
    [Fact]
    public void Gain_grows_with_length_by_three_decibels_for_twice()
    {
        IReadOnlyList<HornFigures> curve = TradeCurve.Of(Feeds.Bench, 0.125, 1.0, 4);
        Assert.Equal(4, curve.Count);

        // Derived: at constant lag A and B both go as √(λL), so G goes as L: 3.01 dB for twice the length, a little more while the throat still counts.
        Assert.All(curve.Zip(curve.Skip(1)), pair =>
        {
            Close.Relative(2.0, pair.Second.Horn.Length / pair.First.Horn.Length, 1e-9);
            Assert.InRange(Decibels.FromRatio(pair.Second.Gain / pair.First.Gain), 2.7, 3.1);
        });
    }

    [Fact]
    public void It_has_the_lengths_that_were_asked_for()
    {
        IReadOnlyList<HornFigures> curve = TradeCurve.Of(Feeds.Bench, 0.05, 0.2, 3);
        Close.Relative(0.05, curve[0].Horn.Length, 1e-12);
        Close.Relative(0.1, curve[1].Horn.Length, 1e-12);
        Close.Relative(0.2, curve[2].Horn.Length, 1e-12);
    }

    [Fact]
    public void A_wish_for_a_gain_lies_on_it()
    {
        HornFigures wished = HornWish.ForGain(Feeds.Bench, Decibels.ToRatio(18.0)).Figures!;
        HornFigures onCurve = TradeCurve.Of(Feeds.Bench, wished.Horn.Length, 0.5, 2)[0];
        Close.Relative(wished.Gain, onCurve.Gain, 1e-9);
    }

    [Theory]
    [InlineData(0.0, 0.1, 5)]
    [InlineData(0.1, 0.05, 5)]
    [InlineData(0.1, 2.0, 5)]
    [InlineData(0.1, 0.2, 1)]
    [InlineData(double.NaN, 0.2, 5)]
    public void A_range_that_is_none_is_refused(double shortest, double longest, int points) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TradeCurve.Of(Feeds.Bench, shortest, longest, points));
}
