using System.Text.Json.Nodes;
using System.Xml.Linq;
using Hornbook.Bench.Files;
using Hornbook.Commands;
using Hornbook.Physics.Antennas;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class ChooseCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-choose-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task The_horn_has_the_gain_wished_for_and_can_be_asked_about_by_its_dimensions()
    {
        JsonNode chosen = (await Json("--gain", "17 dB"))["antenna"]!;
        // What was typed: 17 dB. The choice is polished to 1e-4 dB.
        Close.Absolute(17.0, Number(chosen, "gain_dbi"), 1e-4);
        JsonNode asked = JsonNode.Parse((await Typed.In(
            "antenna", "--guide", "WR-90", "--frequency", "10.525 GHz", "--json",
            "--mouth-width", Metres(chosen, "mouth_width_m"), "--mouth-height", Metres(chosen, "mouth_height_m"), "--length", Metres(chosen, "length_m"))).Output)!;
        Close.Relative(Number(chosen, "gain_dbi"), Number(asked, "gain_dbi"), 1e-9);
    }

    [Fact]
    public async Task The_beam_has_the_widths_wished_for()
    {
        JsonNode planes = (await Json("--beam-e", "20 deg", "--beam-h", "22 deg"))["antenna"]!["planes"]!;
        // What was typed; the choice is polished to 1e-8 rad.
        Close.Absolute(20.0, Number(planes[0]!, "half_power_width_deg"), 1e-5);
        Close.Absolute(22.0, Number(planes[1]!, "half_power_width_deg"), 1e-5);
    }

    [Fact]
    public async Task What_is_cut_lies_on_the_sheet_and_every_number_has_a_unit()
    {
        JsonNode json = await Json("--sheet", "20 cm x 30 cm", "--seam", "6 mm");
        double[] used = [Number(json["sheet"]!, "used_width_m"), Number(json["sheet"]!, "used_height_m")];
        // What was typed, in metres; a nanometre for rounding.
        Assert.InRange(used.Min(), 0.0, 0.20 + 1e-9);
        Assert.InRange(used.Max(), 0.0, 0.30 + 1e-9);
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Theory]
    [InlineData("--gain", "17 dB")]
    [InlineData("--beam-e", "20 deg", "--beam-h", "22 deg")]
    public async Task The_horn_is_also_given_in_steps_of_a_rule_and_reads_back_from_a_bench_file(params string[] wish)
    {
        JsonNode json = await Json([.. wish, "--step", "1 mm"]);
        string text = json["bench_text"]!.GetValue<string>();
        string example = await File.ReadAllTextAsync(Repository.At("examples", "evening-bench.toml"), TestContext.Current.CancellationToken);
        Horn read = (Horn)BenchFile.Parse($"{example}\n{text}\n", "pasted.toml").Plan!.Antenna("chosen-horn");
        foreach ((string key, double size) in new[] { ("mouth_width_m", read.MouthWidth), ("mouth_height_m", read.MouthHeight), ("length_m", read.Length) })
        {
            Close.Relative(Number(json["cut"]!, key), size, 1e-12);
            Close.Absolute(0.0, Math.IEEERemainder(size, 1e-3), 1e-12);
            // Half a step at the most.
            Close.Absolute(Number(json["antenna"]!, key), size, 0.5e-3 + 1e-12);
        }
    }

    [Fact]
    public async Task A_horn_from_a_sheet_is_never_rounded_up()
    {
        JsonNode json = await Json("--sheet", "20 cm x 30 cm", "--step", "2 mm");
        foreach (string key in new[] { "mouth_width_m", "mouth_height_m", "length_m" })
        {
            Assert.InRange(Number(json["cut"]!, key), Number(json["antenna"]!, key) - 2e-3, Number(json["antenna"]!, key));
        }
    }

    [Fact]
    public async Task A_figure_shows_what_length_buys()
    {
        string figure = Path.Combine(_folder, "trade.svg");
        Typed typed = await Typed.In("choose", "--guide", "WR-90", "--frequency", "10.525 GHz", "--gain", "17 dB", "--figure", figure);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.Contains("gain [dBi]", XElement.Load(figure).Descendants().Select(e => e.Value.Trim()));
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task A_wish_that_cannot_be_met_is_bad_news_with_its_reason()
    {
        Typed typed = await Typed.In("choose", "--guide", "WR-90", "--frequency", "10.525 GHz", "--gain", "5 dB");
        Assert.Equal(ExitCode.Spoiled, typed.Code);
        Assert.Contains("no horn is needed for 5.0 dBi", typed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wish for one thing")]
    [InlineData("wish for one thing", "--gain", "17 dB", "--sheet", "20 cm x 30 cm")]
    [InlineData("wish for one thing", "--beam-e", "20 deg")]
    [InlineData("from 0.1 deg to 180 deg", "--beam-e", "200 deg", "--beam-h", "20 deg")]
    [InlineData("from 0 dBi to 60 dBi", "--gain", "-400 dB")]
    [InlineData("from 1 cm to 10 m", "--sheet", "1000 m x 1000 m")]
    [InlineData("is a power", "--gain", "17 dBm")]
    [InlineData("from 1 cm to 10 m", "--sheet", "0 cm x 30 cm")]
    [InlineData("from 0 mm to 10 mm", "--gain", "17 dB", "--tolerance", "2 cm")]
    public async Task A_wish_that_is_none_is_wrong_input(string expected, params string[] wish)
    {
        Typed typed = await Typed.In(["choose", "--guide", "WR-90", "--frequency", "10.525 GHz", .. wish]);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains(expected, typed.Error, StringComparison.Ordinal);
    }

    private static async Task<JsonNode> Json(params string[] wish)
    {
        Typed typed = await Typed.In(["choose", "--guide", "WR-90", "--frequency", "10.525 GHz", .. wish, "--json"]);
        Assert.Equal(ExitCode.Fine, typed.Code);
        return JsonNode.Parse(typed.Output)!;
    }

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();

    private static string Metres(JsonNode node, string key) => FormattableString.Invariant($"{Number(node, key):R} m");
}
