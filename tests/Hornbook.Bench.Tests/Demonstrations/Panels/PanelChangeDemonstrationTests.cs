using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

/// <summary>On the shipped bench: foam, wood, glass, brick, a wet cloth and foil.</summary>
public sealed class PanelChangeDemonstrationTests
{
    private static readonly BenchPlan Plan = BenchFile.Read(Repository.At("examples", "field-bench.toml")).Plan!;

    private static readonly PanelChangeDemonstration Shown = Plan.Demonstrations.OfType<PanelChangeDemonstration>().Single();

    [Fact]
    public void Each_panel_stands_alone_after_nothing() => Assert.Equal(
        ["", .. Shown.Panels],
        Shown.Course(Plan).Select(setting => string.Join(' ', setting.Panels.Where(panel => panel.Stands).Select(panel => panel.Name))));

    [Fact]
    public void One_that_stands_on_the_bench_is_laid_aside_for_nothing_and_for_the_others()
    {
        BenchPlan standing = Plan with { Panels = [.. Plan.Panels.Select(panel => panel.Name == Shown.Panels[1] ? panel with { Stands = true } : panel)] };
        Assert.Equal(
            ["", .. Shown.Panels],
            Shown.Course(standing).Select(setting => string.Join(' ', setting.Panels.Where(panel => panel.Stands).Select(panel => panel.Name))));
    }

    [Fact]
    public void Foam_lets_it_pass_a_pane_stops_part_a_wet_cloth_most_and_foil_all()
    {
        Prediction prediction = Predicting.Of(Plan, Shown);
        Dictionary<string, Comparison> heard = Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons.ToDictionary(c => c.What);

        // ITU-R P.2040-3, 2023, from memory, and the exact sum of a layer: 18 mm of wood pass -1.45 dB at 10 GHz and right angles; here at 10.525 GHz and 10°.
        Close.Absolute(-1.45, heard["board"].InBooks!.Value, 0.15);

        // A beam of many angles and a sheet of ten wavelengths leave half a decibel; where ten are lost, what goes round the edges two.
        Assert.All(["foam", "board", "pane", "bricks"], name => Close.Absolute(heard[name].InBooks!.Value, heard[name].OnBench!.Value, 0.5));
        Close.Absolute(heard["wet-cloth"].InBooks!.Value, heard["wet-cloth"].OnBench!.Value, 2.0);
        Assert.True(heard["foam"].OnBench > -0.1);
        Assert.True(heard["foil"].OnBench < -15.0);
        Assert.All(Shown.Panels, name => Assert.Contains($"'{name}'", prediction.Heard, StringComparison.Ordinal));
    }
}
