using System.Text.Json.Nodes;
using System.Xml.Linq;
using Hornbook.Commands;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class ExposureCommandTests : IDisposable
{
    private static readonly string Bench = Repository.At("examples", "evening-bench.toml");

    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-exposure-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task The_strictest_limit_is_chosen_as_the_bench_file_says_and_every_number_has_a_unit()
    {
        JsonNode json = JsonNode.Parse((await Typed.In("exposure", Bench, "--json")).Output)!;
        JsonNode[] counting = [.. json["limits"]!.AsArray().Select(l => l!).Where(l =>
            l["in_force"]!.GetValue<bool>() && l["scope"]!.GetValue<string>() == "any_source" && l["group"]!.GetValue<string>() == "public")];
        Assert.Equal(counting.Min(l => Number(l, "limit_w_per_m2")), Number(json["chosen"]!, "limit_w_per_m2"));
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Fact]
    public async Task A_stricter_limit_never_keeps_people_less_far_away()
    {
        JsonNode json = JsonNode.Parse((await Typed.In("exposure", Bench, "--json")).Output)!;
        double[] distances = [.. json["limits"]!.AsArray().Select(l => Number(l!, "keep_out_anywhere_m"))];
        Assert.Equal(distances.OrderDescending(), distances);
    }

    [Fact]
    public async Task Text_fits_into_80_columns_and_ends_with_the_cautions()
    {
        string figure = Path.Combine(_folder, "keep-out.svg");
        Typed typed = await Typed.In("exposure", Bench, "--figure", figure);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("- Never look into a horn", typed.Output, StringComparison.Ordinal);
        Assert.Contains("along the table [cm]", XElement.Load(figure).Descendants().Select(e => e.Value.Trim()));
    }

    [Fact]
    public async Task An_unknown_limit_is_wrong_input_and_the_known_ones_are_listed()
    {
        Typed typed = await Typed.In("exposure", Bench, "--limit", "strict");
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains("\n  icnirp-2020-local-public\n", typed.Error, StringComparison.Ordinal);
    }

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();
}
