using System.Text.Json.Nodes;
using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class GuideCommandTests
{
    [Fact]
    public async Task A_standard_guide_is_told_by_name_and_its_numbers_have_units()
    {
        Typed typed = await Typed.In("guide", "wr90", "--frequency", "10.525 GHz", "--json");
        JsonNode json = JsonNode.Parse(typed.Output)!;
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.Equal("WR-90", json["name"]!.GetValue<string>());
        // EIA RS-261-B: 0.900 in × 0.400 in.
        Close.Relative(0.9 * 0.0254, json["width_m"]!.GetValue<double>(), 1e-12);
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Fact]
    public async Task Dimensions_do_as_well_as_a_name()
    {
        Typed typed = await Typed.In("guide", "20 mm x 10mm", "--json");
        Assert.Equal(ExitCode.Fine, typed.Code);
        Close.Relative(0.01, JsonNode.Parse(typed.Output)!["height_m"]!.GetValue<double>(), 1e-12);
    }

    [Fact]
    public async Task A_frequency_that_does_not_travel_is_bad_news_and_no_crash()
    {
        Typed typed = await Typed.In("guide", "WR-90", "--frequency", "5 GHz");
        Assert.Equal(ExitCode.Spoiled, typed.Code);
        Assert.Contains("BELOW CUT-OFF", typed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("WR-91", "no standard guide")]
    [InlineData("20 mm", "no standard guide")]
    [InlineData("20 mm x 10 mm x 5 mm", "not two lengths")]
    [InlineData("1e-300 mm x 1 mm", "from 0.5 mm to 50 cm")]
    [InlineData("1 mm x 1 km", "length fits")]
    [InlineData("20 x 10 mm", "no unit")]
    [InlineData("0 mm x 10 mm", "from 0.5 mm to 50 cm")]
    [InlineData("20 GHz x 10 mm", "a length fits")]
    public async Task What_is_no_guide_is_told_so(string text, string expected)
    {
        Typed typed = await Typed.In("guide", text);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains(expected, typed.Error, StringComparison.Ordinal);
    }
}
