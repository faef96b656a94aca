using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Polarisation: the receiver is rolled about its axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record PolarisationDemonstration(string Name, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Roll;

    /// <inheritdoc/>
    public override string Act => "the receiver is rolled";

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, plan.Receiver with { Pose = plan.Receiver.Pose.Rolled(angle) }, plan.Panels))
        ];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => PolarisationLesson.Of();

    internal override Evaluation Evaluate(Scene scene, Curve curve) => PolarisationEvaluation.Of(curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) => Hearing.Polarisation(curve);
}
