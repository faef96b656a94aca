using System.Text.Json.Nodes;
using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class GridCommandTests
{
    [Fact]
    public async Task Strips_along_the_field_stop_it_and_across_let_it_pass()
    {
        Typed typed = await Typed.In("grid", "--period", "5 mm", "--strip", "2.5 mm", "--frequency", "10.525 GHz", "--json");
        Assert.Equal(ExitCode.Fine, typed.Code);
        JsonNode json = JsonNode.Parse(typed.Output)!;
        // Marcuvitz, Waveguide Handbook (from memory): −18.26 and −0.0653 dB at right angles.
        Close.Absolute(-18.26, json["angular"]![0]!["passed_db"]!.GetValue<double>(), 0.01);
        Close.Absolute(-0.0653, json["angular"]![1]!["passed_db"]!.GetValue<double>(), 0.001);
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Fact]
    public async Task It_is_told_in_eighty_columns_and_a_second_beam_is_named()
    {
        // Rayleigh: 20 mm at 28.5 mm of wavelength scatters from 25° on, tilted across the strips.
        Typed typed = await Typed.In("grid", "--period", "20 mm", "--frequency", "10.525 GHz");
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("make the period smaller", typed.Output, StringComparison.Ordinal);
        Typed fine = await Typed.In("grid", "--period", "5 mm", "--frequency", "10.525 GHz");
        Assert.DoesNotContain("second beam", fine.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("from 1 % to 99 %", "--period", "5 mm", "--strip", "5 mm")]
    [InlineData("from 1 % to 99 %", "--period", "5 mm", "--strip", "0.01 mm")]
    [InlineData("from 0.01 mm to 20 cm", "--period", "0 mm")]
    [InlineData("a length fits", "--period", "5 GHz")]
    public async Task A_grid_that_is_none_is_wrong_input(string expected, params string[] sizes)
    {
        Typed typed = await Typed.In(["grid", .. sizes, "--frequency", "10.525 GHz"]);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains(expected, typed.Error, StringComparison.Ordinal);
    }
}
