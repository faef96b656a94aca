using Hornbook.Drawing.Lettering;
using SkiaSharp;
using Xunit;

namespace Hornbook.Drawing.Tests.Lettering;

public sealed class EmbeddedFontTests
{
    [Theory]
    [InlineData("λ")]
    [InlineData("°")]
    [InlineData("µ")]
    [InlineData("±")]
    [InlineData("²")]
    public void Has_the_signs_that_figures_use(string sign)
    {
        SKTypeface? typeface = new EmbeddedFont().CreateTypeface("anything", bold: false, italic: false); // shared: not ours to dispose
        Assert.Equal(EmbeddedFont.Name, typeface?.FamilyName);
        using SKFont font = new(typeface);
        Assert.True(font.ContainsGlyphs(sign));
    }
}
