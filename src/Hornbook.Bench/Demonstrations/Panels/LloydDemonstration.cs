using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Lloyd's mirror: the direct wave meets the one that a mirror beside the way throws into the receiver, and the two are shifted against each other.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the mirror, its front towards the way: it is moved along its normal, away from the way. Null for the table top, over which both ends are raised.</param>
/// <param name="From">First shift [m].</param>
/// <param name="To">Last shift [m].</param>
/// <param name="Points">How many shifts; ≥ 3.</param>
public sealed record LloydDemonstration(string Name, string? Panel, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Shift;

    /// <inheritdoc/>
    public override string Act => Panel is null ? "both ends are raised over the table top" : "a mirror beside the way is moved away from it";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return LloydLesson.Of(FreeSpace.Wavelength(plan.Frequency));
    }

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) =>
        Panel is string panel ? Arranged.InProportion(plan, reach, panel) : base.Arrangements(plan, reach);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Moves.Evenly(From, To, Points).Select(shift => Panel is string panel
            ? new Setting(shift, string.Empty, plan.Source, plan.Receiver, plan.Panels.PutIn(panel, pose => pose.Shifted(new Vector(-shift, 0.0, 0.0))))
            : new Setting(shift, string.Empty, plan.Source with { Pose = Raised(plan.Source.Pose, shift) }, plan.Receiver with { Pose = Raised(plan.Receiver.Pose, shift) }, plan.Panels))];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve) => MirrorFringes.Of(scene, curve, MirrorAt(scene)).Beside([]);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        string moved = Panel is null ? "raise both ends" : "move the mirror away";
        return $"As you {moved}, the tone comes and goes {Hearing.Between(curve)}.";
    }

    private static Pose Raised(Pose pose, double by) => pose with { Position = pose.Position + new Vector(0.0, 0.0, by) };

    // A table of no known material throws nothing back, on this bench; the numbers then have nothing to be read from.
    private Func<Setting, Mirrored?> MirrorAt(Scene scene) => Panel is string panel
        ? setting => Mirrored.In(setting.Panels.Named(panel))
        : _ => scene.Plan.Table.Panel is { } top ? Mirrored.In(top, scene.Plan.Table.Pose) : null;
}
