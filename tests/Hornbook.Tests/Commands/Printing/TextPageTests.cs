using Hornbook.Commands.Printing;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

public sealed class TextPageTests
{
    [Fact]
    public void A_heading_is_bold_only_where_style_is_welcome()
    {
        TextPage plain = new(styled: false), styled = new(styled: true);
        plain.Heading("Beam");
        styled.Heading("Beam");
        Assert.Equal(["Beam"], plain.Lines);
        Assert.Equal(["\e[1mBeam\e[0m"], styled.Lines);
    }

    [Fact]
    public void A_heading_keeps_one_empty_line_before_it()
    {
        TextPage page = new(styled: false);
        page.Heading("One");
        page.Gap();
        page.Heading("Two");
        Assert.Equal(["One", "", "Two"], page.Lines);
    }

    [Fact]
    public void A_paragraph_breaks_between_words_and_indents_what_follows()
    {
        TextPage page = new(styled: false);
        page.Paragraph(string.Join(' ', Enumerable.Repeat("seventeen-letters", 6)), indent: 4);
        Assert.Equal(2, page.Lines.Count);
        Assert.StartsWith("    seventeen", page.Lines[1], StringComparison.Ordinal);
        Assert.All(page.Lines, line => Assert.InRange(line.Length, 1, TextPage.Width));
    }
}
