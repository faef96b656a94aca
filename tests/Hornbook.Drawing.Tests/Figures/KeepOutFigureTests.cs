using System.Globalization;
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
        // The table is the rectangle with a grey edge; its sides are in the ratio of those in the bench file.
        XElement table = _svg.Descendants().First(e => e.Name.LocalName == "rect" && e.Attribute("stroke")?.Value == "#767676");
        Close.Relative(Plan.Table.Length / Plan.Table.Width, Number(table, "width") / Number(table, "height"), 1e-3);
    }

    [Fact]
    public void Source_receiver_and_limit_are_named()
    {
        string[] texts = [.. _svg.Descendants().Select(e => e.Value.Trim())];
        Assert.Contains("source", texts);
        Assert.Contains("receiver", texts);
        Assert.Contains(texts, t => t.StartsWith("keep out: ", StringComparison.Ordinal));
    }

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
