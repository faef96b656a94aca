using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class KeepOutFigureTests
{
    private static readonly BenchPlan Plan = BenchFile.Read(Repository.At("examples", "evening-bench.toml")).Plan!;

    private readonly XElement _svg;

    public KeepOutFigureTests()
    {
        ExposureField field = ExposureField.Of(Scene.Of(Plan).Source, Plan.Source.WorstCasePower);
        _svg = XElement.Parse(KeepOutFigure.Of(Plan, field, ExposureLimits.Strictest(ExposureGroup.Public, Plan.Frequency)!).ToSvg());
    }

    [Fact]
    public void The_table_is_true_to_scale()
    {
        // The table is the grey rectangle; its sides in the drawing are in the ratio of its sides in the bench file.
        double[] corners = Numbers(Paths("#767676").First(d => d.Contains('Z', StringComparison.Ordinal) || d.Contains('H', StringComparison.Ordinal)));
        double width = corners.Where((_, i) => i % 2 == 0).Max() - corners.Where((_, i) => i % 2 == 0).Min();
        double height = corners.Where((_, i) => i % 2 == 1).Max() - corners.Where((_, i) => i % 2 == 1).Min();
        Close.Relative(Plan.Table.Length / Plan.Table.Width, width / height, 0.01);
    }

    [Fact]
    public void Source_receiver_and_limit_are_named()
    {
        string[] texts = [.. _svg.Descendants().Select(e => e.Value.Trim())];
        Assert.Contains("source", texts);
        Assert.Contains("receiver", texts);
        Assert.Contains(texts, t => t.StartsWith("keep out: ", StringComparison.Ordinal));
    }

    private IEnumerable<string> Paths(string stroke) => _svg.Descendants()
        .Where(e => e.Name.LocalName == "path" && e.Attribute("stroke")?.Value == stroke).Select(e => e.Attribute("d")!.Value);

    private static double[] Numbers(string text) =>
        [.. Regex.Matches(text, @"-?\d+(\.\d+)?").Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
}
