using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Media;

public sealed class ConductorsTests
{
    [Theory]
    // D. M. Pozar, Microwave Engineering (2012), appendix F, from memory.
    [InlineData("silver", 6.173e7)]
    [InlineData("copper", 5.813e7)]
    [InlineData("gold", 4.098e7)]
    [InlineData("aluminium", 3.816e7)]
    [InlineData("brass", 2.564e7)]
    public void A_metal_is_found_by_name(string name, double conductivity) =>
        Assert.Equal(conductivity, Conductors.Find(name.ToUpperInvariant())?.Conductivity);

    [Fact]
    public void An_unknown_metal_is_not_found() => Assert.Null(Conductors.Find("unobtainium"));

    [Fact]
    public void Brass_is_one_and_the_same() => Assert.Same(Conductor.Brass, Conductors.Find("brass"));

    [Theory]
    // D. M. Pozar, Microwave Engineering (2012), Example 1.2, from memory: skin depths at 10 GHz.
    [InlineData("aluminium", 8.14e-7)]
    [InlineData("copper", 6.60e-7)]
    [InlineData("gold", 7.86e-7)]
    [InlineData("silver", 6.40e-7)]
    public void The_skin_depth_at_10_GHz(string name, double expected) =>
        // The book rounds its prefactor to 5.03e-3 (0.06 % low) and prints three digits (0.07 %).
        Close.Relative(expected, Conductors.Find(name)!.SkinDepth(10e9), 1.3e-3);

    [Fact]
    public void Surface_resistance_times_skin_depth_times_conductivity_is_one() =>
        Close.Relative(1.0, Conductor.Brass.SurfaceResistance(10e9) * Conductor.Brass.SkinDepth(10e9) * Conductor.Brass.Conductivity, 1e-14);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_conductivity_that_is_none_is_refused(double conductivity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Conductor("nothing", conductivity));
}
