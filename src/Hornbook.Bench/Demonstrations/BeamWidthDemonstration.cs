using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The beam width: one end is turned on the spot while the other stands.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Turned">Which end turns.</param>
/// <param name="From">First angle off its present direction [rad].</param>
/// <param name="To">Last angle off its present direction [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record BeamWidthDemonstration(string Name, BenchEnd Turned, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Turn;

    /// <inheritdoc/>
    public override string Act => Turned == BenchEnd.Source ? "the source is turned" : "the receiver is turned";

    /// <inheritdoc/>
    public override bool NeedsFarZone => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Moves.Evenly(From, To, Points).Select(angle => At(plan, angle))];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => BeamWidthLesson.Of(Turned);

    internal override Evaluation Evaluate(Scene scene, Curve curve) => BeamWidthEvaluation.Of(scene, this, curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        Hearing.BeamWidth(scene, this, (BeamWidthEvaluation)evaluation, curve);

    private Setting At(BenchPlan plan, double angle) => Turned == BenchEnd.Source
        ? new(angle, string.Empty, plan.Source with { Pose = plan.Source.Pose.Turned(angle) }, plan.Receiver, plan.Panels)
        : new(angle, string.Empty, plan.Source, plan.Receiver with { Pose = plan.Receiver.Pose.Turned(angle) }, plan.Panels);
}
