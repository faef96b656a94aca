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
public sealed record GridRevivalDemonstration(string Name, string Grid, double From, double To, int Points)
    : GridRollDemonstration(Name, Grid, From, To, Points)
{
    /// <inheritdoc/>
    public override string Act => "the receiver is rolled by 90°, and a grid between the two is rolled in its own plane";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => GridRevivalLesson.Of();

    // sin α cos α of the field gets through, α the angle between strips and field: ¼ sin² 2α of the power (common practice, no source).
    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double aligned = OpenLink(scene);
        double[] cosines = [.. curve.Points.Select(point => AlongStrips(point.Setting))];
        return new LawEvaluation(
        [
            new("revived to", ComparedQuantity.Level, Decibels.FromRatio(curve.Strongest.Reading.Link / aligned), Decibels.FromRatio(0.25),
                "beside the aligned bench without the grid; half the amplitude is lost at the grid, and half at the receiver"),
            new("strongest at", ComparedQuantity.Angle, curve.Strongest.Setting.At, null, "roll off the present one; 45° to both fields by the law"),
            new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link), null, "strongest over weakest"),
        ])
        {
            Law = [.. cosines.Select(c => aligned * c * c * (1.0 - (c * c)))],
            LawName = "¼ sin² 2α of the aligned bench",
        };
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"Crossed, the receiver takes nothing from the source; as you roll the grid the tone comes back, from {Hearing.At(curve, curve.Weakest)} "
        + $"to {Hearing.At(curve, curve.Strongest)}: {Hearing.Steps(curve)}.";

    private protected override ReceiverEnd Listening(ReceiverEnd receiver) => receiver with { Pose = receiver.Pose.Rolled(0.5 * Math.PI) };
}
