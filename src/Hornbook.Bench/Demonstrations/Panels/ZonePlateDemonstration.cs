using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A zone plate gathers the wave: the receiver is moved along the axis behind it, through its focus.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the plate with round openings about its middle.</param>
/// <param name="From">First distance from the plate to the receiver [m]; &gt; 0.</param>
/// <param name="To">Last distance [m]; &gt; 0.</param>
/// <param name="Points">How many distances; ≥ 3.</param>
public sealed record ZonePlateDemonstration(string Name, string Panel, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.FromPanel;

    /// <inheritdoc/>
    public override string Act => "behind a zone plate the receiver is moved along the axis";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => ZonePlateLesson.Of();

    /// <summary>As the bench stands: the distances belong to the rings.</summary>
    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => [plan];

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector plate = plan.Panels.Named(Panel).Pose.Position, beam = (plate - plan.Source.Pose.Position).Unit;
        return
        [
            .. Moves.Evenly(From, To, Points).Select(distance => new Setting(
                distance, string.Empty, plan.Source, plan.Receiver with { Pose = plan.Receiver.Pose with { Position = plate + (beam * distance) } }, plan.Panels.PutIn(Panel)))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve) => ZonePlateEvaluation.Of(scene, scene.Plan.Panels.Named(Panel), curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        Setting best = curve.Strongest.Setting;
        Reading open = scene.Read(best.Source, best.Receiver, best.Panels.Without(Panel));
        return $"Take the plate away and put it back: at {Hearing.Place(curve, curve.Strongest)} behind it the tone goes from {InWords.Tone(open.Heard)} to {InWords.Tone(curve.Strongest.Reading.Heard)}. "
            + $"Along the axis it {Hearing.Goes(curve)} from there to {Hearing.At(curve, curve.Weakest)}: {Hearing.Steps(curve)}.";
    }
}
