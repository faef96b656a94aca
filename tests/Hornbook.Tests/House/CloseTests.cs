using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A comparison that passes what it should not would make every other test worthless.</summary>
public static class CloseTests
{
    public sealed class Relative
    {
        // derived: 1024.5 − 1024 = 0.5 exactly, and 0.5/1024 = 2^-11 exactly: the edge itself is inside.
        [Fact]
        public void Passes_at_the_tolerance_and_fails_beyond_it()
        {
            Close.Relative(1024.0, 1024.5, 1.0 / 2048.0);
            Close.Relative(1024.0, 1023.5, 1.0 / 2048.0);
            Assert.Throws<NotCloseException>(() => Close.Relative(1024.0, Math.BitIncrement(1024.5), 1.0 / 2048.0));
            Assert.Throws<NotCloseException>(() => Close.Relative(1024.0, Math.BitDecrement(1023.5), 1.0 / 2048.0));
        }

        [Fact]
        public void Measures_against_the_expected_value_whatever_its_sign()
        {
            Close.Relative(-1024.0, -1024.5, 1.0 / 2048.0);
            Assert.Throws<NotCloseException>(() => Close.Relative(-1024.0, 1024.0, 1.0 / 2048.0));
        }

        [Fact]
        public void Passes_zero_for_zero_only()
        {
            Close.Relative(0.0, 0.0, 1e-12);
            Assert.Throws<NotCloseException>(() => Close.Relative(0.0, double.Epsilon, 1e-12));
        }

        [Theory]
        [MemberData(nameof(NotNumbers), MemberType = typeof(CloseTests))]
        public void Refuses_what_is_not_a_finite_number_on_either_side(double expected, double actual) =>
            Assert.Throws<NotCloseException>(() => Close.Relative(expected, actual, 1e300));
    }

    public sealed class Absolute
    {
        // derived: powers of two, so that the edge is exact.
        [Fact]
        public void Passes_at_the_tolerance_and_fails_beyond_it()
        {
            Close.Absolute(1.0, 1.25, 0.25);
            Close.Absolute(1.0, 0.75, 0.25);
            Assert.Throws<NotCloseException>(() => Close.Absolute(1.0, Math.BitIncrement(1.25), 0.25));
            Assert.Throws<NotCloseException>(() => Close.Absolute(1.0, Math.BitDecrement(0.75), 0.25));
        }

        [Theory]
        [MemberData(nameof(NotNumbers), MemberType = typeof(CloseTests))]
        public void Refuses_what_is_not_a_finite_number_on_either_side(double expected, double actual) =>
            Assert.Throws<NotCloseException>(() => Close.Absolute(expected, actual, double.PositiveInfinity));

        [Fact]
        public void A_tolerance_that_is_not_a_number_passes_nothing() =>
            Assert.Throws<NotCloseException>(() => Close.Absolute(1.0, 1.0, double.NaN));

        [Fact]
        public void Says_both_numbers_their_difference_and_ratio() =>
            Assert.Equal(
                "expected 2, got 2.5 (difference 0.5, ratio 1.25; absolute tolerance 0.25)",
                Assert.Throws<NotCloseException>(() => Close.Absolute(2.0, 2.5, 0.25)).Message);
    }

    public static TheoryData<double, double> NotNumbers() => new()
    {
        { double.NaN, 1.0 },
        { 1.0, double.NaN },
        { double.NaN, double.NaN },
        { double.PositiveInfinity, 1.0 },
        { 1.0, double.PositiveInfinity },
        { double.PositiveInfinity, double.PositiveInfinity },
        { double.NegativeInfinity, double.NegativeInfinity },
        { 1.0, double.NegativeInfinity },
    };
}
