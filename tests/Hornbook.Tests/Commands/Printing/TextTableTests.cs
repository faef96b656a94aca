using Hornbook.Commands.Printing;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

public sealed class TextTableTests
{
    [Fact]
    public void Numbers_stand_to_the_right_and_words_to_the_left()
    {
        TextTable table = new("plane", ">width");
        table.Row("E", "9.5 deg");
        table.Row("H", "21.4 deg");
        Assert.Equal(["plane     width", "-----  --------", "E       9.5 deg", "H      21.4 deg"], table.Lines(80));
    }

    [Fact]
    public void The_last_column_wraps_under_itself()
    {
        TextTable table = new(string.Empty, string.Empty);
        table.Row("Trust", "good to half a decibel");
        Assert.Equal(["Trust  good to half", "       a decibel"], table.Lines(20));
    }

    [Fact]
    public void No_line_is_wider_than_the_page()
    {
        TextTable table = new("name", "what");
        table.Row("a", string.Concat(Enumerable.Repeat("word ", 60)));
        Assert.All(table.Lines(80), line => Assert.InRange(line.Length, 1, 80));
    }

    [Fact]
    public void A_row_of_another_length_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new TextTable("one", "two").Row("only"));
}
