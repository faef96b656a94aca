using Hornbook.Drawing.Figures;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

/// <summary>The figures about one antenna.</summary>
public sealed class AntennaFigureTests
{
    private const double Frequency = 10.525e9;

    private static readonly RectangularGuide Guide = StandardGuides.Find("WR-90")!.Guide;

    [Fact]
    public void A_pattern_shows_three_planes_half_power_and_where_not_to_trust_it()
    {
        string[] texts = SvgTexts.Of(PatternFigure.Of("horn", Antenna.At(new Horn(Guide, 0.094, 0.079, 0.13, Conductor.Brass), Frequency)));
        Assert.Empty(Wanted().Except(texts));

        static IEnumerable<string> Wanted() => ["E plane", "H plane", "45°", "half power", "not to be trusted", "off the axis [deg]", "level over that on the axis [dB]"];
    }

    [Fact]
    public void A_crossed_field_that_is_nowhere_visible_is_not_in_the_legend() =>
        Assert.DoesNotContain("45°, crossed field", SvgTexts.Of(PatternFigure.Of("horn", Antenna.At(new Horn(Guide, 0.094, 0.079, 0.13, Conductor.Brass), Frequency))));

    [Fact]
    public void An_open_guide_has_a_crossed_field_to_show() =>
        Assert.Contains("45°, crossed field", SvgTexts.Of(PatternFigure.Of("open guide", Antenna.At(new OpenGuide(Guide, Conductor.Brass), Frequency))));

    [Fact]
    public void What_length_buys_is_shown_with_the_horn_that_was_chosen()
    {
        Feed feed = new(Guide, Frequency, Conductor.Brass);
        IReadOnlyList<HornFigures> trade = TradeCurve.Of(feed, 0.05, 0.2, 5);
        string[] texts = SvgTexts.Of(TradeFigure.Of("a gain", trade, trade[2]));
        Assert.Contains("chosen length", texts);
        Assert.Contains("length from throat to mouth [mm]", texts);
    }
}
