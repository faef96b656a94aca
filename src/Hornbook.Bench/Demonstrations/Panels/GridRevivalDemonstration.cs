using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Source and receiver are crossed and hear nothing of each other; a grid put between them and rolled brings the tone back.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Grid">Name of the grid.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record GridRevivalDemonstration(string Name, string Grid, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Roll;

    /// <inheritdoc/>
    public override string Act => "the receiver is rolled by 90°, and a grid between the two is rolled in its own plane";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Moves.InBeam(plan, reach, Grid);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ReceiverEnd crossed = plan.Receiver with { Pose = plan.Receiver.Pose.Rolled(0.5 * Math.PI) };
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, crossed, plan.Panels.PutIn(Grid, pose => pose.Rolled(angle))))
        ];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => GridRevivalLesson.Of();

    // sin α cos α of the field gets through, α the angle between strips and field: ¼ sin² 2α of the power (common practice, no source).
    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double aligned = scene.Read(scene.Plan.Source, scene.Plan.Receiver).Link;
        double fieldRoll = scene.Plan.Source.Pose.Roll;
        double gridRoll = scene.Plan.Panels.First(panel => panel.Name == Grid).Pose.Roll;
        double[] law = [.. curve.Positions.Select(roll => 0.25 * aligned * Math.Pow(Math.Sin(2.0 * (gridRoll + roll - fieldRoll)), 2.0))];
        return new LawEvaluation(
        [
            new("revived to", ComparedQuantity.Level, Decibels.FromRatio(curve.Strongest.Reading.Link / aligned), Decibels.FromRatio(0.25),
                "beside the aligned bench without the grid; half the amplitude is lost at the grid, and half at the receiver"),
            new("strongest at", ComparedQuantity.Angle, curve.Strongest.Setting.At, null, "roll off the present one; 45° to both fields by the law"),
            new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link), null, "strongest over weakest"),
        ])
        {
            Law = law,
            LawName = "¼ sin² 2α of the aligned bench",
        };
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"Crossed, the bench is silent; as you roll the grid the tone comes back, from {InWords.Tone(curve.Weakest.Reading.Heard)} at {Hearing.Place(curve, curve.Weakest)} "
        + $"to {InWords.Tone(curve.Strongest.Reading.Heard)} at {Hearing.Place(curve, curve.Strongest)}: {Hearing.Steps(curve)}.";
}
