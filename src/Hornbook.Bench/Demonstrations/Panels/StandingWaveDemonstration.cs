using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A standing wave before a plate, and the wavelength from it: a probe looks across the beam, and the plate behind it is moved away.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the plate; it is stood square to the beam.</param>
/// <param name="Before">From the plate, where it stands, to the probe, towards the source [m]; &gt; 0.</param>
/// <param name="From">First shift of the plate off its place, away from the source [m].</param>
/// <param name="To">Last shift [m].</param>
/// <param name="Points">How many places; ≥ 3.</param>
/// <remarks>
/// The probe looks across, so that by its own symmetry it takes the wave that comes and the one that returns alike: its level is not known well, but
/// where the minima lie does not depend on it. The plate is moved, not the probe: the hand stays behind the plate.
/// </remarks>
public sealed record StandingWaveDemonstration(string Name, string Panel, double Before, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Shift;

    /// <inheritdoc/>
    public override string Act => "a plate is moved away behind a probe that looks across the beam";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return StandingWaveLesson.Of(FreeSpace.Wavelength(plan.Frequency));
    }

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.AtReach(plan, reach, Panel);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector source = plan.Source.Pose.Position, plate = plan.Panels.Named(Panel).Pose.Position, beam = (plate - source).Unit;
        double bearing = Math.Atan2(beam.Y, beam.X), tilt = Math.Asin(beam.Z);
        ReceiverEnd probe = plan.Receiver with { Pose = new Pose(plate - (beam * Before), bearing + (0.5 * Math.PI), 0.0, plan.Receiver.Pose.Roll) };
        return
        [
            .. Moves.Evenly(From, To, Points).Select(shift => new Setting(
                shift, string.Empty, plan.Source, probe,
                plan.Panels.PutIn(Panel, pose => new Pose(plate + (beam * shift), bearing + Math.PI, -tilt, pose.Roll))))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        MirrorFringes fringes = MirrorFringes.Of(scene, curve, setting => Mirrored.In(setting.Panels.Named(Panel)));
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        return fringes.Beside(
        [
            new("minima apart", ComparedQuantity.Length, fringes.Apart, 0.5 * wavelength, "half a wavelength of the plate's way is a whole one to and fro"),
        ]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you move the plate, the tone swings {Hearing.Between(curve)}.";
}
