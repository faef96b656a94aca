using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class LloydDemonstrationTests
{
    // Upright beside the way, its front to the axis; both ends wide.
    private static readonly BenchPlan Plan = Wide(WaveBench.With(new RectangularSurface(0.6, 0.3), 0.4, 0.8, new Pose(new Vector(0.0, -0.05, 0.0), turn: 0.5 * Math.PI)));
    private static readonly LloydDemonstration Plate = new("lloyd", "plate", 0.0, 0.17, 86);

    [Fact]
    public void The_mirror_moves_away_along_its_normal() => Assert.All(Plate.Course(Plan), setting =>
        Close.Absolute(0.0, (setting.Panels[0].Pose.Position - WaveBench.At(0.4) - new Vector(0.0, -0.05 - setting.At, 0.0)).Length, 1e-12));

    [Fact]
    public void Over_the_table_both_ends_are_raised() => Assert.All(new LloydDemonstration("table", null, -0.2, 0.2, 5).Course(Plan), setting =>
    {
        Close.Absolute(0.45 + setting.At, setting.Source.Pose.Position.Z, 1e-12);
        Close.Absolute(0.45 + setting.At, setting.Receiver.Pose.Position.Z, 1e-12);
    });

    [Fact]
    public void It_is_dark_where_the_ways_differ_by_whole_wavelengths()
    {
        Prediction prediction = Predicting.Of(Plan, Plate);

        // derived: half a wave is lost in a metal mirror that the field lies along; the plate's ends move a minimum by a tenth of a wave.
        Close.Absolute(1.0, prediction.Shown("half waves lost").InBooks!.Value, 1e-9);
        Close.Absolute(1.0, prediction.Shown("half waves lost").OnBench!.Value, 0.3);
        Close.Relative(WaveBench.Wavelength, prediction.Shown("wavelength").OnBench!.Value, 0.06);
        Assert.Contains("move the mirror away", prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Plate.Lesson(Plan));
    }

    [Fact]
    public void A_quarter_turn_of_both_ends_exchanges_dark_and_bright()
    {
        BenchPlan rolled = Plan with
        {
            Source = Plan.Source with { Pose = Plan.Source.Pose with { Roll = 0.5 * Math.PI } },
            Receiver = Plan.Receiver with { Pose = Plan.Receiver.Pose with { Roll = 0.5 * Math.PI } },
        };
        Prediction prediction = Predicting.Of(rolled, Plate);

        // derived: a field across a metal mirror is not turned over
        Close.Absolute(0.0, prediction.Shown("half waves lost").InBooks!.Value, 1e-9);
        Close.Absolute(0.0, prediction.Shown("half waves lost").OnBench!.Value, 0.3);
    }

    [Fact]
    public void A_metal_table_makes_the_same_fringes()
    {
        BenchPlan table = Plan with
        {
            Table = Plan.Table.Of(new Metal()),
            Source = Plan.Source with { Pose = new Pose(new Vector(0.7, 0.0, 0.05), roll: 0.5 * Math.PI) },
            Receiver = Plan.Receiver with { Pose = new Pose(new Vector(1.5, 0.0, 0.05), turn: Math.PI, roll: 0.5 * Math.PI) },
        };
        Prediction prediction = Predicting.Of(table, new LloydDemonstration("table", null, 0.0, 0.17, 86));

        // derived: as for the plate; the whole table is large enough to be endless.
        Close.Absolute(1.0, prediction.Shown("half waves lost").OnBench!.Value, 0.1);
        Close.Relative(WaveBench.Wavelength, prediction.Shown("wavelength").OnBench!.Value, 0.02);
        IReadOnlyList<double> law = ((LawEvaluation)prediction.Evaluation).Law!;
        double rmsDb = Math.Sqrt(prediction.Curve.Links.Zip(law, (link, share) => Math.Pow(Decibels.FromRatio((link + (0.01 * law.Max())) / (share + (0.01 * law.Max()))), 2.0)).Average());
        Assert.True(rmsDb < 1.0, $"{rmsDb} dB");
    }

    [Fact]
    public void A_table_that_is_left_out_shows_nothing()
    {
        Prediction prediction = Predicting.Of(Plan, new LloydDemonstration("table", null, -0.1, 0.1, 3));

        Assert.Null(prediction.Shown("wavelength").OnBench);
        Assert.Null(((LawEvaluation)prediction.Evaluation).Law);
    }

    private static BenchPlan Wide(BenchPlan plan) => plan with { Source = plan.Source with { Antenna = "open" } };
}
