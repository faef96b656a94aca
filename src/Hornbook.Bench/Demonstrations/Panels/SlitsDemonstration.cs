using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Slits in a plate: the receiver is swung about the plate's middle at a fixed distance, through bright and dark.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the plate with upright slits.</param>
/// <param name="From">First swing of the receiver off straight ahead [rad].</param>
/// <param name="To">Last swing [rad].</param>
/// <param name="Points">How many directions; ≥ 3.</param>
public sealed record SlitsDemonstration(string Name, string Panel, double From, double To, int Points) : Demonstration(Name)
{
    /// <summary>From the plate's middle to the receiver's mouth [m]; null for as far as it stands.</summary>
    public double? Distance { get; init; }

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Swing;

    /// <inheritdoc/>
    public override string Act => "behind a plate with slits the receiver is swung about the plate's middle";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => SlitsLesson.Of();

    /// <summary>As the bench stands: the distances belong to the slits.</summary>
    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => [plan];

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector middle = plan.Panels.Named(Panel).Pose.Position;
        Pose receiver = Arranged.AtDistance(plan.Receiver.Pose, middle, Distance);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, plan.Receiver with { Pose = receiver.Swung(middle, angle) }, plan.Panels.PutIn(Panel)))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve) => SlitsEvaluation.Of(scene, scene.Plan.Panels.Named(Panel), curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you swing the receiver, the tone comes and goes {Hearing.Between(curve)}.";
}
