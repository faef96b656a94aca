using Hornbook.Commands.Printing;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

public sealed class CsvTableTests
{
    [Fact]
    public void Follows_RFC_4180()
    {
        CsvTable table = new("turn [deg]", "what");
        table.Row(-2.5, "a \"loud\" tone, clipped");
        Assert.Equal("turn [deg],what\r\n-2.5,\"a \"\"loud\"\" tone, clipped\"\r\n", table.ToString());
    }

    [Fact]
    public void Numbers_come_back_to_the_last_bit()
    {
        CsvTable table = new("a");
        table.Row(Math.PI);
        Assert.Equal(Math.PI, double.Parse(table.ToString().Split("\r\n")[1], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void What_is_not_finite_leaves_an_empty_cell()
    {
        CsvTable table = new("a", "b");
        table.Row(double.NaN, double.NegativeInfinity);
        Assert.Equal("a,b\r\n,\r\n", table.ToString());
    }
}
