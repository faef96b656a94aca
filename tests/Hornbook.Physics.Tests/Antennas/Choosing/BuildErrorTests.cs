using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas.Choosing;

public sealed class BuildErrorTests
{
    private const double Frequency = 10.525e9;

    private static readonly Horn Drawn = new(Feeds.Bench.Guide, 0.098, 0.076, 0.09, Feeds.Bench.Walls);

    [Fact]
    public void Every_dimension_is_tried_both_ways()
    {
        IReadOnlyList<BuildError> errors = BuildError.Each(Drawn, Frequency, new BuildTolerance(1e-3, 0.05e-3));
        Assert.Equal(Enum.GetValues<HornDimension>(), errors.Select(error => error.Dimension));
        BuildError length = errors[2];
        Close.Relative(0.089, length.Smaller.Horn.Length, 1e-12);
        Close.Relative(0.091, length.Larger.Horn.Length, 1e-12);
        Close.Relative(0.098, length.Larger.Horn.MouthWidth, 1e-15);
        Close.Relative(Drawn.Guide.Width + 0.05e-3, errors[3].Larger.Horn.Guide.Width, 1e-12);
    }

    [Fact]
    public void The_figures_are_those_of_the_exact_antenna_as_built()
    {
        BuildError height = BuildError.Each(Drawn, Frequency, new BuildTolerance(1e-3))[1];
        Antenna built = Antenna.At(new Horn(Drawn.Guide, 0.098, 0.077, 0.09, Drawn.Walls), Frequency);
        Close.Relative(built.Gain, height.Larger.Gain, 5e-6);
        Close.Relative(BeamShape.Of(built, PatternPlane.Electric).HalfPowerWidth!.Value, height.Larger.HalfPowerWidthE!.Value, 5e-6);
    }

    [Fact]
    public void A_wider_mouth_narrows_its_own_plane_only()
    {
        BuildError width = BuildError.Each(Drawn, Frequency, new BuildTolerance(1e-3))[0];
        Assert.True(width.Larger.HalfPowerWidthH < width.Smaller.HalfPowerWidthH);

        // The E plane feels the width only through β/k, which changes by 1e-4.
        Close.Relative(width.Smaller.HalfPowerWidthE!.Value, width.Larger.HalfPowerWidthE!.Value, 1e-4);
    }

    [Fact]
    public void Without_a_tolerance_of_the_guide_its_dimensions_are_left_out() =>
        Assert.Equal(3, BuildError.Each(Drawn, Frequency, new BuildTolerance(1e-3)).Count);

    [Fact]
    public void A_plane_that_does_not_flare_has_the_guides_error()
    {
        Horn sectoral = new(Feeds.Bench.Guide, Feeds.Bench.Guide.Width, 0.06, 0.1, Feeds.Bench.Walls);
        IReadOnlyList<BuildError> errors = BuildError.Each(sectoral, Frequency, new BuildTolerance(1e-3, 0.1e-3));
        Assert.DoesNotContain(errors, error => error.Dimension == HornDimension.MouthWidth);
        BuildError guide = errors.Single(error => error.Dimension == HornDimension.GuideWidth);
        Close.Relative(guide.Larger.Horn.Guide.Width, guide.Larger.Horn.MouthWidth, 1e-15);
    }

    [Fact]
    public void An_error_as_large_as_the_horn_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BuildError.Each(Drawn, Frequency, new BuildTolerance(0.1)));

    [Theory]
    [InlineData(-1e-3)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_tolerance_that_is_none_is_refused(double tolerance)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new BuildTolerance(tolerance));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BuildTolerance(1e-3, tolerance));
    }
}
