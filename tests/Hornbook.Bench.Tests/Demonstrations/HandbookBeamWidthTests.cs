using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class HandbookBeamWidthTests
{
    [Theory]
    // Stutzman and Thiele, Antenna Theory and Design: optimum horn, 54° λ/B and 78° λ/A (from memory); to the printed degree.
    [InlineData(PatternPlane.Electric, "horn", 54.0, 0.079)]
    [InlineData(PatternPlane.Magnetic, "horn", 78.0, 0.094)]
    // In-phase apertures: 50.76° λ/B (uniform) and 68.12° λ/A (cosine), derived from the aperture integrals.
    [InlineData(PatternPlane.Electric, "open", 50.76, 0.01016)]
    [InlineData(PatternPlane.Magnetic, "open", 68.12, 0.02286)]
    public void Is_a_constant_times_wavelength_over_mouth(PatternPlane plane, string antenna, double coefficientDeg, double mouth)
    {
        Antenna built = GoodBench.Scene.Antenna(antenna);
        Close.Relative(coefficientDeg * GoodBench.Degree * built.Wavelength / mouth, HandbookBeamWidth.Of(built, plane), 3e-3);
    }

    [Fact]
    public void Has_no_rule_for_the_diagonal() => Assert.Throws<ArgumentOutOfRangeException>(
        () => HandbookBeamWidth.Of(GoodBench.Scene.Antenna("horn"), PatternPlane.Diagonal));
}
