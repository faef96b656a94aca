using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class CurveFigureTests
{
    private static readonly Scene Example = Scene.Of(BenchFile.Read(Repository.At("examples", "evening-bench.toml")).Plan!);

    public static TheoryData<string> Names => [.. Example.Plan.Demonstrations.Select(d => d.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Shows_hertz_volts_and_decibels_against_what_is_changed(string name)
    {
        Figure figure = Of(name, out Prediction prediction);
        string[] texts = SvgTexts.Of(figure);
        Abscissa changed = prediction.Curve.Abscissa;
        Assert.Contains("tone [Hz]", texts);
        Assert.Contains("amplifier [V]", texts);
        Assert.Contains("received [dBm]", texts);
        Assert.Contains(changed.Unit.Length > 0 ? $"{changed.Name} [{changed.Unit}]" : changed.Name, texts);
        Assert.Equal(prediction.Heard, figure.Description);
    }

    [Fact]
    public void Antennas_stand_below_by_name() => Assert.Contains(Example.Plan.Antennas[0].Name, SvgTexts.Of(Of("gain", out _)));

    [Fact]
    public void A_tone_that_cannot_rise_further_is_marked()
    {
        BenchPlan plan = Example.Plan;
        Amplifier loud = plan.Detection.Amplifier with { Gain = 1000.0 * plan.Detection.Amplifier.Gain };
        Scene scene = Scene.Of(plan with { Detection = plan.Detection with { Amplifier = loud } });
        Prediction prediction = Prediction.Of(scene, plan.Demonstrations[0], null, TestContext.Current.CancellationToken);
        Assert.Contains("clipped", SvgTexts.Of(CurveFigure.Of(plan.Title, prediction)));
    }

    private static Figure Of(string name, out Prediction prediction)
    {
        prediction = Prediction.Of(Example, Example.Plan.Demonstrations.Single(d => d.Name == name));
        return CurveFigure.Of(Example.Plan.Title, prediction);
    }
}
