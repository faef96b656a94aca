using System.Text.Json;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class PredictWavesTests
{
    private static readonly string Bench = Repository.At("examples", "focus-bench.toml");

    [Fact]
    public async Task Points_along_an_axis_behind_a_panel_carry_their_place_in_metres()
    {
        Typed typed = await Typed.In("predict", Bench, "dish", "--json");
        using JsonDocument json = JsonDocument.Parse(typed.Output);
        JsonElement first = json.RootElement.GetProperty("demonstrations")[0].GetProperty("points")[0];

        Close.Relative(0.09, first.GetProperty("from_panel_m").GetDouble(), 1e-12); // the file's "9 cm"
        Assert.False(first.TryGetProperty("distance_m", out _));
    }

    [Fact]
    public async Task The_law_beside_it_is_told_in_text()
    {
        Typed typed = await Typed.In("predict", Bench, "zones");

        Assert.Contains(typed.Lines, line => line.StartsWith("gain at the focus", StringComparison.Ordinal));
        Assert.Contains(typed.Lines, line => line.StartsWith("from panel [cm]", StringComparison.Ordinal));
    }
}
