using System.Text.Json.Nodes;
using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class AntennaCommandTests
{
    private static readonly string Bench = Repository.At("examples", "evening-bench.toml");

    private static readonly string[] Horn =
        ["antenna", "--guide", "WR-90", "--mouth-width", "94 mm", "--mouth-height", "79 mm", "--length", "66 mm", "--frequency", "10.525 GHz"];

    [Fact]
    public async Task The_same_horn_by_name_and_by_dimensions_has_the_same_numbers()
    {
        JsonNode named = JsonNode.Parse((await Typed.In("antenna", Bench, "large-horn", "--json")).Output)!;
        JsonNode sized = JsonNode.Parse((await Typed.In(
            "antenna", "--guide", "WR-90", "--frequency", Text(named, "frequency_hz", "Hz"), "--json", "--length", Text(named, "length_m", "m"),
            "--mouth-width", Text(named, "mouth_width_m", "m"), "--mouth-height", Text(named, "mouth_height_m", "m"))).Output)!;
        Assert.Empty(UnitOfKey.Missing(named));
        Close.Relative(named["gain_dbi"]!.GetValue<double>(), sized["gain_dbi"]!.GetValue<double>(), 1e-12);
    }

    [Fact]
    public async Task Its_numbers_fit_into_80_columns()
    {
        Typed typed = await Typed.In(Horn);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [InlineData("a horn needs all of", "antenna", "--guide", "WR-90", "--frequency", "10 GHz", "--mouth-width", "94 mm")]
    [InlineData("at least --guide and --frequency", "antenna")]
    [InlineData("--frequency is missing", "antenna", "--guide", "WR-90")]
    [InlineData("only above 6.557 GHz", "antenna", "--guide", "WR-90", "--frequency", "5 GHz")]
    [InlineData("at least the guide's width, 22.9 mm", "antenna", "--guide", "WR-90", "--frequency", "10 GHz", "--mouth-width", "9 mm", "--mouth-height", "79 mm", "--length", "130 mm")]
    [InlineData("\"94\" has no unit", "antenna", "--guide", "WR-90", "--frequency", "10 GHz", "--mouth-width", "94")]
    [InlineData("from 1 GHz to 300 GHz", "antenna", "--guide", "WR-90", "--frequency", "0 GHz")]
    [InlineData("at most 30 are computed", "antenna", "--guide", "WR-90", "--frequency", "10 GHz", "--mouth-width", "9 m", "--mouth-height", "79 mm", "--length", "130 mm")]
    [InlineData("type one of silver, copper", "antenna", "--guide", "WR-90", "--frequency", "10 GHz", "--walls", "cheese")]
    public async Task What_does_not_fit_is_told_with_what_would(string expected, params string[] arguments)
    {
        Typed typed = await Typed.In(arguments);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Empty(typed.Output);
        Assert.Contains(expected, typed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_antenna_that_the_bench_has_not_is_wrong_input() =>
        Assert.Equal(
            "\"dish\" is no antenna of this bench; type one of large-horn, small-horn, probe\n",
            (await Typed.In("antenna", Bench, "dish")).Error);

    private static string Text(JsonNode node, string key, string unit) => FormattableString.Invariant($"{node[key]!.GetValue<double>():R} {unit}");
}
