using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

/// <summary>The grid that is rolled between aligned antennas, and between crossed ones.</summary>
public sealed class GridDemonstrationsTests
{
    private const double Degree = Math.PI / 180.0;

    // Strips so close that 1/1700 of the power leaks along them: what the laws say of an ideal grid can be seen.
    private static readonly BenchPlan Fine = PanelBench.Plan with
    {
        Panels = [PanelBench.Plan.Panels.Named("strips") with { Panel = new Panel(new RectangularSurface(0.3, 0.3), new StripGrid(1e-3, 0.5e-3)) }],
    };

    [Fact]
    public void Rolling_a_grid_leaves_the_rest_and_adds_to_its_present_roll()
    {
        BenchPanel held = Fine.Panels[0] with { Pose = Fine.Panels[0].Pose with { Roll = 0.2 } };
        IReadOnlyList<Setting> course = new GridTurnDemonstration("g", "strips", 0.0, 1.0, 3).Course(Fine with { Panels = [held] });
        Assert.Equal([0.2, 0.7, 1.2], course.Select(s => Math.Round(s.Panels[0].Pose.Roll, 12)));
        Assert.All(course, s => Assert.Equal((Fine.Source, Fine.Receiver, true), (s.Source, s.Receiver, s.Panels[0].Stands)));
    }

    [Fact]
    public void Between_aligned_antennas_the_power_follows_the_fourth_power_of_the_cosine()
    {
        Curve curve = Predicting.Of(Fine, new GridTurnDemonstration("g", "strips", 0.0, 90.0 * Degree, 7)).Curve;
        double[] shares = [.. curve.Points.Select(point => point.Reading.Link / curve.Points[^1].Reading.Link)];

        // Malus's law twice: 30°, 45° and 60° from across the strips leave 0.5625, 0.25 and 0.0625. The leak along the strips and what goes round
        // the edges leave 0.2 dB, and 0.5 dB where little is left.
        Close.Absolute(0.0, Decibels.FromRatio(shares[4] / 0.5625), 0.2);
        Close.Absolute(0.0, Decibels.FromRatio(shares[3] / 0.25), 0.2);
        Close.Absolute(0.0, Decibels.FromRatio(shares[2] / 0.0625), 0.5);
        Assert.True(shares[0] < 3e-3);
    }

    [Theory]
    [InlineData(0.3, 90.0, ", strips along it:")] // wider than the beam
    [InlineData(0.1, 90.0, " and not where they lie along it, ")] // narrower: most goes round
    [InlineData(0.1, 60.0, "^((?!along it).)*$")] // they never lie along it
    public void It_is_said_where_least_is_left_and_whether_the_strips_lie_along_the_field_there(double side, double over, string said)
    {
        BenchPlan plan = Fine with { Panels = [Fine.Panels[0] with { Panel = new Panel(new RectangularSurface(side, side), new StripGrid(1e-3, 0.5e-3)) }] };
        Assert.Matches(said, Predicting.Of(plan, new GridTurnDemonstration("g", "strips", 90.0 * Degree, (90.0 - over) * Degree, 19)).Heard);
    }

    [Fact]
    public void Between_crossed_ones_a_quarter_comes_back_at_45_degrees_and_nothing_along_and_across()
    {
        Prediction prediction = Predicting.Of(Fine, new GridRevivalDemonstration("r", "strips", 0.0, 90.0 * Degree, 7));
        LawEvaluation evaluation = Assert.IsType<LawEvaluation>(prediction.Evaluation);

        // ¼ sin² 2α (common practice, no source); 0.15 dB for a beam of many angles.
        Close.Absolute(Decibels.FromRatio(0.25), evaluation.Comparisons[0].OnBench!.Value, 0.15);
        Close.Absolute(45.0, evaluation.Comparisons[1].OnBench!.Value / Degree, 1e-9);
        Assert.All(prediction.Curve.Links.Zip(evaluation.Law!).Where(point => point.Second > 1e-9 * evaluation.Law!.Max()), point =>
            Close.Absolute(0.0, Decibels.FromRatio(point.First / point.Second), 0.3));
        Assert.All([0, 6], i => Assert.True(prediction.Curve.Links[i] < 1e-6 * prediction.Curve.Links[3]));
    }

    [Fact]
    public void Strips_aslant_in_a_frame_that_stands_and_faces_a_rolled_source_follow_the_same_law()
    {
        SourceEnd source = Fine.Source with { Pose = Fine.Source.Pose with { Roll = 20.0 * Degree } };
        BenchPanel grid = Fine.Panels[0];
        BenchPanel aslant = grid with
        {
            Panel = grid.Panel with { Sheet = new TurnedSheet(grid.Panel.Sheet, 30.0 * Degree) },
            Pose = grid.Pose with { Turn = grid.Pose.Turn + Math.PI },
            Stands = true,
        };
        BenchPlan plan = Fine with { Source = source, Receiver = Fine.Receiver.RolledWith(source, 20.0 * Degree), Panels = [aslant] };
        Prediction prediction = Predicting.Of(plan, new GridRevivalDemonstration("r", "strips", 0.0, 90.0 * Degree, 10));
        LawEvaluation evaluation = Assert.IsType<LawEvaluation>(prediction.Evaluation);

        // ¼ sin² 2α (common practice, no source), as above; beside a bench without the grid, though it stands.
        Close.Absolute(Decibels.FromRatio(0.25), evaluation.Comparisons[0].OnBench!.Value, 0.15);
        Assert.All(prediction.Curve.Links.Zip(evaluation.Law!).Where(point => point.Second > 0.05 * evaluation.Law!.Max()), point =>
            Close.Absolute(0.0, Decibels.FromRatio(point.First / point.Second), 0.3));
    }
}
