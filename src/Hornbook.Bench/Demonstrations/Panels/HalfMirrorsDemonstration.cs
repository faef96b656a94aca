using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Two half mirrors as an interferometer: the second is moved away along the source's axis, and the tone rises every half wavelength.</summary>
/// <param name="Name">Short name.</param>
/// <param name="First">Name of the half mirror that stands.</param>
/// <param name="Second">Name of the one that is moved.</param>
/// <param name="From">First shift off its place, along the source's axis [m].</param>
/// <param name="To">Last shift [m].</param>
/// <param name="Points">How many places; ≥ 3.</param>
public sealed record HalfMirrorsDemonstration(string Name, string First, string Second, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Shift;

    /// <inheritdoc/>
    public override string Act => "of two half mirrors face to face the second is moved along the axis";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => HalfMirrorsLesson.Of(plan);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        IReadOnlyList<BenchPanel> standing = plan.Panels.PutIn(First);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(shift => new Setting(
                shift, string.Empty, plan.Source, plan.Receiver,
                standing.PutIn(Second, pose => pose with { Position = pose.Position + (plan.Source.Pose.Forward * shift) })))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve) => HalfMirrorsEvaluation.Of(scene, this, curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you move the second mirror, the tone swings {Hearing.Between(curve)}.";
}
