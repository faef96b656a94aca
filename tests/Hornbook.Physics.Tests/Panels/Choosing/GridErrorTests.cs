using Hornbook.Physics.Panels.Choosing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Choosing;

public sealed class GridErrorTests
{
    private const double Frequency = 10.525e9;

    private static readonly GridFigures Drawn = GridFigures.Of(new StripMake(), 3e-3, 1.5e-3, Frequency);

    [Fact]
    public void Wider_strips_stop_more_and_let_less_pass()
    {
        // ±0.2 mm is what scissors and tape keep (common practice, no source).
        GridError metal = GridError.Each(Drawn, 0.2e-3).First(error => error.Dimension == GridDimension.Metal);
        Assert.True(metal.Smaller.PassedAlong > Drawn.PassedAlong && Drawn.PassedAlong > metal.Larger.PassedAlong);
        Assert.True(metal.Smaller.PassedAcross > Drawn.PassedAcross && Drawn.PassedAcross > metal.Larger.PassedAcross);
    }

    [Fact]
    public void A_longer_period_with_the_same_strips_leaks_as_Lamb_says()
    {
        // Lamb 1898, from memory: |T∥|² goes as X² with X = (p/λ) ln csc(πw/2p), p ≪ λ.
        GridError period = GridError.Each(Drawn, 0.2e-3).First(error => error.Dimension == GridDimension.Period);
        double X(GridFigures figures) => figures.Period * Math.Log(1.0 / Math.Sin(0.5 * Math.PI * figures.Metal / figures.Period));
        double expectedDb = 2.0 * Decibels.FromRatio(X(period.Larger) / X(Drawn));
        // derived: corrections go as (p/λ)², 0.01, of which the change sees a tenth; and 1 + 4X² of 1 %.
        Close.Absolute(expectedDb, Decibels.FromRatio(period.Larger.PassedAlong / Drawn.PassedAlong), 0.06);
    }

    [Fact]
    public void No_error_changes_nothing() =>
        Assert.All(GridError.Each(Drawn, 0.0), error => Assert.Equal((Drawn, Drawn), (error.Smaller, error.Larger)));

    [Fact]
    public void Metal_that_would_vanish_stays_at_the_least_that_is_computed() =>
        // derived: one per cent of 3 mm.
        Close.Relative(0.03e-3, GridError.Each(Drawn, 1.6e-3)[0].Smaller.Metal, 1e-12);

    [Theory]
    [InlineData(-1e-4)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Rejects_an_error_that_is_none(double error) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GridError.Each(Drawn, error));
}
