using Hornbook.Tabletop;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class LengthUnitTests
{
    [Theory]
    [InlineData("in", "in")]
    [InlineData("cm", "cm")]
    [InlineData("ell", "cm")]
    [InlineData(null, "cm")]
    public void What_a_browser_remembers_is_known_or_centimetres(string? sign, string unit) => Assert.Equal(unit, LengthUnit.Named(sign).Sign);

    [Fact]
    public void A_ruler_bears_its_numbers_at_even_places()
    {
        // derived: from −35 to 35 cm, every twenty: −20, 0, 20; a table of 1.8 m is 70.9 in long, numbered every six up to 66.
        Assert.Equal([-20, 0, 20], RulerDivision.Labels(-350.0, 350.0, 10.0, 20));
        Assert.Equal(66, RulerDivision.Labels(0.0, 1800.0, 25.4, 6).Last());
    }
}
