using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

public sealed class HalfMirrorsDemonstrationTests
{
    private static readonly HalfMirrorsDemonstration Demonstration = new("mirrors", "half-1", "half-2", 0.0, 32e-3, 33);

    [Fact]
    public void The_first_stands_and_the_second_goes_along_the_axis_of_a_turned_source()
    {
        Pose turned = new(new Vector(0.3, 0.1, 0.4), turn: 0.2);
        BenchPlan plan = PanelBench.Plan with { Source = PanelBench.Plan.Source with { Pose = turned } };
        Vector from = plan.Panels.Named("half-2").Pose.Position;
        Assert.All(Demonstration.Course(plan), setting =>
        {
            Assert.Equal(plan.Panels.Named("half-1") with { Stands = true }, setting.Panels.Named("half-1"));
            Close.Absolute(0.0, (setting.Panels.Named("half-2").Pose.Position - from - (turned.Forward * setting.At)).Length, 1e-15);
        });
    }

    [Fact]
    [Trait("Cost", "Slow")]
    public void The_tone_leaps_up_every_half_wavelength_and_the_wavelength_can_be_read_off()
    {
        Prediction prediction = Predicting.Of(PanelBench.Plan, Demonstration);
        Comparison[] numbers = [.. Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons];

        // M. Born, E. Wolf, Principles of Optics, 7th ed., 1999, § 7.6: maxima λ/2 apart. The beam that spreads puts them 2 % wider apart at most.
        Close.Relative(0.5 * PanelBench.Wavelength, numbers[0].OnBench!.Value, 0.02);
        Close.Relative(PanelBench.Wavelength, numbers[1].OnBench!.Value, 0.02);

        // derived: ((1 + R)/(1 − R))² = 9 for R = ½; what walks off sideways takes a decibel or two from it.
        Close.Absolute(Decibels.FromRatio(9.0), numbers[2].InBooks!.Value, 1e-9);
        Close.Absolute(numbers[2].InBooks!.Value, numbers[2].OnBench!.Value, 2.0);

        // derived: sin²(k s) = (1 − R)²/4R = 1/8 on either side.
        Close.Relative(Math.Asin(Math.Sqrt(1.0 / 8.0)) / Math.PI * PanelBench.Wavelength, numbers[3].InBooks!.Value, 1e-12);
        Close.Relative(numbers[3].InBooks!.Value, numbers[3].OnBench!.Value, 0.35);
        Assert.Contains("swings between", prediction.Heard, StringComparison.Ordinal);
    }
}
