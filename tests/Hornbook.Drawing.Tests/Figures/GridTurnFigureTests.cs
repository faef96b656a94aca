using Hornbook.Drawing.Figures;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class GridTurnFigureTests
{
    [Fact]
    public void It_says_in_words_that_a_crossed_receiver_hears_a_quarter_through_a_good_grid()
    {
        // 10 GHz and a period of a sixtieth of the wavelength. derived: (T⊥ − T∥) sin 45° cos 45° of one and nothing is a half, −6.0 dB.
        Figure figure = GridTurnFigure.Of("fine grid", new StripGrid(0.5e-3, 0.35e-3), 10e9);
        Assert.Contains("hears -6.0 decibels", figure.ToSvg(), StringComparison.Ordinal);
        Assert.Contains("to a receiver crossed with it", SvgTexts.Of(figure));
    }
}
