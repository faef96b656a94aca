using System.Text.Json.Nodes;
using Hornbook.Commands;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
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

    [Fact]
    public async Task A_board_passes_the_same_from_both_sides_and_throws_back_differently()
    {
        Typed typed = await Typed.In("grid", "--period", "5 mm", "--strip", "2 mm", "--board", "FR-4 1.6 mm", "--frequency", "10.525 GHz", "--json");
        JsonNode json = JsonNode.Parse(typed.Output)!;
        BoardedStripGrid grid = new(new StripGrid(5e-3, 2e-3), new LayeredSheet(new Layer(Dielectrics.Find("FR-4")!, 1.6e-3)));
        SheetMatrices strips = grid.At(10.525e9).Arriving(SheetFace.Front, 0.0, 0.0), board = grid.At(10.525e9).Arriving(SheetFace.Back, 0.0, 0.0);
        JsonNode row = json["angular"]![0]!;
        Close.Absolute(LevelDb(strips.Transmission.AlongAlong), row["passed_db"]!.GetValue<double>(), 1e-9);
        Close.Absolute(LevelDb(strips.Reflection.AlongAlong), row["reflected_db"]!.GetValue<double>(), 1e-9);
        Close.Absolute(LevelDb(board.Reflection.AlongAlong), row["reflected_from_board_db"]!.GetValue<double>(), 1e-9);
        Assert.Equal("FR-4", json["board"]!["material"]!.GetValue<string>());
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Fact]
    public async Task Wires_are_told_as_wires()
    {
        Typed typed = await Typed.In("grid", "--period", "8 mm", "--wire", "0.8 mm", "--frequency", "10.525 GHz");
        Assert.StartsWith("Wires of 0.8 mm, one each 8.0 mm", typed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("strips", typed.Output, StringComparison.Ordinal);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task A_board_fits_into_eighty_columns_also_with_a_second_beam()
    {
        Typed typed = await Typed.In("grid", "--period", "20 mm", "--board", "acrylic glass 12.5 mm", "--frequency", "10.525 GHz");
        Assert.Contains("off board", typed.Output, StringComparison.Ordinal);
        Assert.Contains("a second beam", typed.Output, StringComparison.Ordinal);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [InlineData("from 0.1 % to 40 %", "--period", "5 mm", "--wire", "3 mm")]
    [InlineData("without --strip and --board", "--period", "5 mm", "--wire", "1 mm", "--strip", "1 mm")]
    [InlineData("without --strip and --board", "--period", "5 mm", "--wire", "1 mm", "--board", "FR-4 1.6 mm")]
    [InlineData("is not known; type one of air", "--period", "5 mm", "--board", "cheese 4 mm")]
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

    private static double LevelDb(System.Numerics.Complex amplitude) => 2.0 * Decibels.FromRatio(amplitude.Magnitude);
}
