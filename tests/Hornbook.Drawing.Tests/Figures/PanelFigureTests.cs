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
}
