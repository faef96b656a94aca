using Hornbook.Physics.Guides;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Guides;

public sealed class StandardGuidesTests
{
    // EIA RS-261-B and IEC 60153-2 as reprinted in D. M. Pozar, Microwave Engineering (2012), appendix I; from memory: name, inside mm,
    // cut-off of TE10 and of the next mode in GHz, recommended band in GHz.
    public static TheoryData<string, string, double, double, double, double, double, double> Sizes { get; } = new()
    {
        { "WR-284", "R32", 72.136, 34.036, 2.0780, 4.156, 2.60, 3.95 },
        { "WR-229", "R40", 58.166, 29.083, 2.5770, 5.154, 3.30, 4.90 },
        { "WR-187", "R48", 47.549, 22.149, 3.1525, 6.305, 3.95, 5.85 },
        { "WR-137", "R70", 34.849, 15.799, 4.3013, 8.603, 5.85, 8.20 },
        { "WR-112", "R84", 28.499, 12.624, 5.2597, 10.519, 7.05, 10.0 },
        { "WR-90", "R100", 22.860, 10.160, 6.5571, 13.114, 8.20, 12.4 },
        { "WR-75", "R120", 19.050, 9.525, 7.8686, 15.737, 10.0, 15.0 },
        { "WR-62", "R140", 15.799, 7.899, 9.4878, 18.976, 12.4, 18.0 },
        { "WR-51", "R180", 12.954, 6.477, 11.5714, 23.143, 15.0, 22.0 },
        { "WR-42", "R220", 10.668, 4.318, 14.0510, 28.102, 18.0, 26.5 },
        { "WR-28", "R320", 7.112, 3.556, 21.0765, 42.153, 26.5, 40.0 },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_standard_size_has_the_dimensions_cutoffs_and_band_of_the_standard(
        string name, string iecName, double widthMm, double heightMm, double cutoffGhz, double nextGhz, double lowestGhz, double highestGhz)
    {
        StandardGuide size = StandardGuides.Find(name)!;
        Assert.Equal(iecName, size.IecName);

        // The table's millimetres are rounded to three decimals.
        Close.Absolute(widthMm * 1e-3, size.Guide.Width, 0.51e-6);
        Close.Absolute(heightMm * 1e-3, size.Guide.Height, 0.51e-6);
        Close.Relative(cutoffGhz * 1e9, size.Guide.CutoffFrequency, 5e-4);
        Close.Relative(nextGhz * 1e9, GuideModes.First(size.Guide, 2)[1].CutoffFrequency, 5e-4);
        Assert.Equal(new FrequencyBand(lowestGhz * 1e9, highestGhz * 1e9), size.RecommendedBand);
    }

    [Fact]
    public void There_are_eleven() => Assert.Equal(Sizes.Count, StandardGuides.All.Count);

    [Fact]
    public void Every_recommended_band_lies_inside_the_single_mode_band() => Assert.All(StandardGuides.All, size =>
    {
        IReadOnlyList<GuideMode> modes = GuideModes.First(size.Guide, 2);
        Assert.True(size.RecommendedBand.Lowest > modes[0].CutoffFrequency);
        Assert.True(size.RecommendedBand.Highest < modes[1].CutoffFrequency);
    });

    [Fact]
    public void Every_recommended_band_keeps_the_usual_margins() => Assert.All(StandardGuides.All, size =>
    {
        // Derived from the table above: lower edge 1.25 to 1.36 f_c, upper edge 1.86 to 1.91 f_c (rounded outwards).
        Assert.InRange(size.RecommendedBand.Lowest / size.Guide.CutoffFrequency, 1.25, 1.365);
        Assert.InRange(size.RecommendedBand.Highest / size.Guide.CutoffFrequency, 1.85, 1.91);
    });

    [Theory]
    [InlineData("WR-90")]
    [InlineData("wr90")]
    [InlineData(" Wr 90 ")]
    [InlineData("R100")]
    [InlineData("r 100")]
    public void A_name_is_found_however_it_is_written(string name) => Assert.Equal("WR-90", StandardGuides.Find(name)?.Name);

    [Theory]
    [InlineData("")]
    [InlineData("WR-91")]
    [InlineData("90")]
    public void An_unknown_name_is_not_found(string name) => Assert.Null(StandardGuides.Find(name));

    [Fact]
    public void A_guide_by_millimetres_is_recognised() =>
        Assert.Equal("WR-90", StandardGuides.Matching(new RectangularGuide(22.86e-3, 10.16e-3))?.Name);

    [Fact]
    public void A_guide_of_no_standard_size_has_no_name_but_a_band()
    {
        // A guide of 25 mm × 10 mm: TE10 at c/50 mm = 5.996 GHz, TE20 at twice that; band by rule 1.25 f_c to 1.9 f_c.
        RectangularGuide guide = new(25e-3, 10e-3);
        Assert.Null(StandardGuides.Matching(guide));
        FrequencyBand band = StandardGuides.RecommendedBand(guide);
        Close.Relative(1.25 * 299_792_458.0 / 0.05, band.Lowest, 1e-12);
        Close.Relative(1.90 * 299_792_458.0 / 0.05, band.Highest, 1e-12);
    }

    [Fact]
    public void Two_guides_serve_the_bench_frequency() =>
        Assert.Equal(["WR-90", "WR-75"], StandardGuides.For(10.525e9).Select(size => size.Name));
}
