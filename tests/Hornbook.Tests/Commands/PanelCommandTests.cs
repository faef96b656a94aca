using System.Text.Json.Nodes;
using System.Xml.Linq;
using Hornbook.Commands;
using Hornbook.Physics;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class PanelCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-panel-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task What_passes_is_what_the_sheet_says_and_every_number_has_a_unit()
    {
        Typed typed = await Typed.In("panel", "plywood 6 mm", "2.6-0.02j 1 cm", "--frequency", "10.525 GHz", "--json");
        Assert.Equal(ExitCode.Fine, typed.Code);
        JsonNode json = JsonNode.Parse(typed.Output)!;
        LayeredSheet sheet = new(new Layer(Dielectrics.Find("plywood")!, 6e-3), new Layer(new LaboratoryDielectric("any", 2.6, 0.02 / 2.6), 10e-3));
        // derived: 45° across is the seventh row of six angles with two each.
        JsonNode row = json["angular"]![6]!;
        Close.Absolute(45.0, row["angle_deg"]!.GetValue<double>(), 1e-9);
        double passed = sheet.At(10.525e9, 0.25 * Math.PI, Polarisation.Across).Passed;
        Close.Absolute(Decibels.FromRatio(passed), row["passed_db"]!.GetValue<double>(), 1e-9);
        Assert.Empty(UnitOfKey.Missing(json));
    }

    [Fact]
    public async Task It_is_told_in_eighty_columns_and_drawn()
    {
        string figure = Path.Combine(_folder, "window.svg");
        Typed typed = await Typed.In("panel", "glass 4 mm", "air 12 mm", "glass 4 mm", "--frequency", "24.125 GHz", "--figure", figure);
        Assert.All(typed.Lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("passes [dB]", XElement.Load(figure).Descendants().Select(e => e.Value.Trim()));
    }

    [Fact]
    public async Task A_material_outside_the_band_in_which_it_is_known_is_said_to_be_a_guess()
    {
        // ITU-R P.2040: floorboard from 50 GHz.
        Typed typed = await Typed.In("panel", "floorboard 2 cm", "--frequency", "10.525 GHz");
        Assert.Contains("not known at this frequency", typed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("is not known; type one of air", "cheese 4 mm")]
    [InlineData("is not a material and a thickness", "plywood")]
    [InlineData("a length fits", "plywood 6 mV")]
    [InlineData("from 0.01 mm to 1 m", "plywood 0 mm")]
    [InlineData("is not known", "0.5 4 mm")]
    [InlineData("is not known", "2.6+0.02j 4 mm")]
    [InlineData("Required", null)]
    public async Task What_is_no_layer_is_told_so(string expected, string? layer)
    {
        Typed typed = await Typed.In(layer is null ? ["panel", "--frequency", "10 GHz"] : ["panel", layer, "--frequency", "10 GHz"]);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains(expected, typed.Error, StringComparison.Ordinal);
    }
}
