using Hornbook.Commands.Printing;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

// derived: each expected text is the number rounded by hand.
public sealed class ShowTests
{
    [Theory]
    [InlineData(7.614e-6, "7.61 µW")]
    [InlineData(0.9999, "1.00 W")]
    [InlineData(0.09994, "99.9 mW")]
    [InlineData(0.99951e-3, "1.00 mW")]
    [InlineData(12.34, "12.3 W")]
    [InlineData(123.4, "123 W")]
    [InlineData(-2.5e-3, "-2.50 mW")]
    [InlineData(0.0, "0 W")]
    [InlineData(1e-30, "0 W")]
    [InlineData(double.NaN, "none")]
    [InlineData(double.PositiveInfinity, "none")]
    public void Three_digits_take_the_prefix_that_suits(double number, string expected) => Assert.Equal(expected, Show.Si(number, "W"));

    [Theory]
    [InlineData(-0.04, "0.0 dB")]
    [InlineData(-31.26, "-31.3 dB")]
    [InlineData(double.NegativeInfinity, "none")]
    public void A_level_has_one_decimal_and_no_negative_zero(double level, string expected) => Assert.Equal(expected, Show.Db(level));

    [Theory]
    [InlineData(0.094, "94.0 mm")]
    [InlineData(0.62, "62.0 cm")]
    [InlineData(12.0, "12.0 m")]
    public void A_length_takes_the_unit_of_a_ruler(double length, string expected) => Assert.Equal(expected, Show.Length(length));
}
