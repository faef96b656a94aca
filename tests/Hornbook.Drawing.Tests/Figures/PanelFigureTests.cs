using Hornbook.Drawing.Figures;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class PanelFigureTests
{
    private static readonly Figure Figure = PanelFigure.Of(new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3)), 24.125e9);

    [Fact]
    public void It_names_the_panel_what_is_shown_and_both_lies_of_the_field()
    {
        string[] texts = SvgTexts.Of(Figure);
        Assert.Empty(Wanted().Except(texts));

        static IEnumerable<string> Wanted() =>
            ["glass 4 mm at 24.125 GHz", "passes [dB]", "thrown back [dB]", "angle to the normal [deg]", "field across the plane of incidence", "field within it"];
    }

    [Fact]
    public void It_says_in_words_what_happens_at_right_angles()
    {
        SheetResponse upright = new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3)).At(24.125e9, 0.0, Polarisation.Across);
        Assert.Contains(FormattableString.Invariant($"{100.0 * upright.Passed:F0} % of the power passes"), Figure.ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_coarse_grid_it_shows_from_where_a_second_beam_leaves()
    {
        // derived: a period of 0.6 λ has one wave only up to 41.8°.
        string[] texts = SvgTexts.Of(PanelFigure.Of("coarse", new StripGrid(18e-3, 9e-3), 10e9));
        Assert.Contains("field along the metal", texts);
        Assert.Contains("a second beam beyond", texts);
        Assert.DoesNotContain("a second beam beyond", SvgTexts.Of(PanelFigure.Of("fine", new StripGrid(5e-3, 2.5e-3), 10e9)));
    }
}
