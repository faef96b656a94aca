using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The distance law: the receiver is moved along the source's axis.</summary>
/// <param name="Name">Short name.</param>
/// <param name="From">First distance from mouth to mouth [m].</param>
/// <param name="To">Last distance from mouth to mouth [m].</param>
/// <param name="Points">How many distances; ≥ 3.</param>
public sealed record DistanceDemonstration(string Name, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Distance;

    /// <inheritdoc/>
    public override string Act => "the receiver is moved along the source's axis";

    /// <inheritdoc/>
    public override bool NeedsFarZone => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(distance =>
                new Setting(distance, string.Empty, plan.Source, Moves.OnAxis(plan.Source, plan.Receiver, distance), plan.Panels))
        ];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => DistanceLesson.Of(plan);

    internal override Evaluation Evaluate(Scene scene, Curve curve) => DistanceEvaluation.Of(scene, curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) => Hearing.Distance(scene, curve);
}
