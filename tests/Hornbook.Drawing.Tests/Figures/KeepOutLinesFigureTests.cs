using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class KeepOutLinesFigureTests
{
    [Fact]
    public void Each_line_bears_its_limit_in_both_views()
    {
        BenchPlan plan = BenchFile.Read(Repository.At("examples", "evening-bench.toml")).Plan!;
        ExposureField field = ExposureField.Of(Scene.Of(plan).Source, plan.Source.WorstCasePower);
        // Two usual limits (common practice, no source).
        string[] texts = SvgTexts.Of(KeepOutLinesFigure.Of(plan, field, [10.0, 50.0], TestContext.Current.CancellationToken));
        Assert.Equal(2, texts.Count(text => text == "10 W/m²"));
        Assert.Equal(2, texts.Count(text => text == "50 W/m²"));
        Assert.Contains("along the table, from above [cm]", texts);
        Assert.Contains("along the table, from the side [cm]", texts);
    }
}
