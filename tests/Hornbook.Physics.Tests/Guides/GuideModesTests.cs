using CsCheck;
using Hornbook.Physics.Guides;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Guides;

public sealed class GuideModesTests
{
    private static readonly Gen<RectangularGuide> AnyGuide =
        Gen.Select(Gen.Double[1e-3, 0.2], Gen.Double[1e-3, 0.2], (width, height) => new RectangularGuide(width, height));

    [Theory]
    // D. M. Pozar, Microwave Engineering (2012), Example 3.1: 1.07 cm × 0.43 cm filled with a dielectric of 2.08. Recomputed with the exact c
    // (the book takes 3e8 m/s and prints 9.72, 19.44, 24.19, 26.07, 31.03 GHz).
    [InlineData(0, "TE10", 9.713, 9.72)]
    [InlineData(1, "TE20", 19.427, 19.44)]
    [InlineData(2, "TE01", 24.171, 24.19)]
    [InlineData(3, "TE11", 26.050, 26.07)]
    [InlineData(4, "TM11", 26.050, 26.07)]
    [InlineData(6, "TE21", 31.010, 31.03)]
    [InlineData(7, "TM21", 31.010, 31.03)]
    public void A_filled_guide_has_the_cutoffs_of_the_textbook(int place, string name, double exactGhz, double bookGhz)
    {
        GuideMode mode = GuideModes.First(new RectangularGuide(1.07e-2, 0.43e-2), 8, relativePermittivity: 2.08)[place];
        Assert.Equal(name, mode.Name);
        Close.Absolute(exactGhz, mode.CutoffFrequency / 1e9, 0.0006);
        Close.Relative(bookGhz, mode.CutoffFrequency / 1e9, 1e-3);
    }

    [Fact]
    public void A_mode_that_the_textbook_leaves_out_lies_between()
    {
        // Derived: TE30 = 3 TE10 = 29.140 GHz, between TE11/TM11 and TE21/TM21.
        GuideMode mode = GuideModes.First(new RectangularGuide(1.07e-2, 0.43e-2), 8, relativePermittivity: 2.08)[5];
        Assert.Equal("TE30", mode.Name);
    }

    [Fact]
    public void Modes_that_begin_together_come_TE_first()
    {
        // WR-229 is twice as wide as high, so TE20 and TE01 begin together.
        string[] names = [.. GuideModes.First(StandardGuides.Find("WR-229")!.Guide, 5).Select(mode => mode.Name)];
        Assert.Equal(["TE10", "TE20", "TE01", "TE11", "TM11"], names);
    }

    [Fact]
    public void The_list_is_ascending_and_no_mode_comes_twice() => AnyGuide.Sample(
        guide =>
        {
            IReadOnlyList<GuideMode> modes = GuideModes.First(guide, 25);
            Assert.Equal(25, modes.Select(mode => mode.Name).Distinct().Count());
            Assert.All(modes.Zip(modes.Skip(1)), pair => Assert.True(pair.Second.CutoffFrequency >= pair.First.CutoffFrequency - 2e3));
        },
        iter: 200);

    [Fact]
    public void As_many_modes_travel_as_begin_below_the_frequency() => AnyGuide.Sample(
        guide =>
        {
            IReadOnlyList<GuideMode> modes = GuideModes.First(guide, 12);
            double between = 0.5 * (modes[10].CutoffFrequency + modes[11].CutoffFrequency);
            int expected = modes.Count(mode => mode.CutoffFrequency < between);
            Assert.Equal(expected, GuideModes.Travelling(guide, between).Count);
        },
        iter: 200);

    [Fact]
    public void Many_modes_go_like_the_area()
    {
        // Weyl's law: TE plus TM modes below f number 2 × π a b f²/c² in the limit (the perimeter terms of TE and TM cancel).
        RectangularGuide guide = new(0.1, 0.07);
        const double Frequency = 300e9;
        double expected = 2.0 * Math.PI * 0.1 * 0.07 * Math.Pow(Frequency / Constants.SpeedOfLight, 2.0);

        // 2 % for a count of some 44 000.
        Close.Relative(expected, GuideModes.Travelling(guide, Frequency).Count, 0.02);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void A_count_below_one_is_refused(int count) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GuideModes.First(new RectangularGuide(0.02, 0.01), count));

    [Theory]
    [InlineData(0.9)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_filling_thinner_than_vacuum_is_refused(double relativePermittivity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GuideModes.First(new RectangularGuide(0.02, 0.01), 2, relativePermittivity));
}
