using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>The law of reflection: a plate is turned in the beam, and the receiver is swung about its middle to find where the wave goes.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the plate.</param>
/// <param name="Incidence">Between the wave and the plate's normal [rad]; positive turns the plate to the left.</param>
/// <param name="From">First direction in which the receiver stands, seen from the plate, off that of the source [rad].</param>
/// <param name="To">Last direction [rad].</param>
/// <param name="Points">How many directions; ≥ 3.</param>
public sealed record ReflectionDemonstration(string Name, string Panel, double Incidence, double From, double To, int Points) : Demonstration(Name)
{
    /// <summary>From the plate's middle to the receiver's mouth [m]; null for as far as it stands.</summary>
    public double? Distance { get; init; }

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Swing;

    /// <inheritdoc/>
    public override string Act => "the receiver is swung about a plate that is turned in the beam";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => ReflectionLesson.Of(Incidence);

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.InProportion(plan, reach, Panel);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector source = plan.Source.Pose.Position;
        Pose plate = plan.Panels.Named(Panel).Pose;
        ReceiverEnd receiver = plan.Receiver with { Pose = Arranged.AtDistance(plan.Receiver.Pose, plate.Position, Distance) };
        IReadOnlyList<BenchPanel> standing = plan.Panels.PutIn(Panel, pose => Wrapped(MirrorWay.Panel(pose, source, Incidence)));
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, receiver with { Pose = Wrapped(MirrorWay.Receiver(receiver.Pose, plate, source, 0.5 * angle)) }, standing))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        Setting setting = curve.Strongest.Setting;
        HalfPower beam = HalfPower.Of(curve.Positions, curve.Links);
        double way = (setting.Source.Pose.Position - scene.Plan.Panels.Named(Panel).Pose.Position).Length
            + (setting.Receiver.Pose.Position - scene.Plan.Panels.Named(Panel).Pose.Position).Length;
        double straight = scene.Read(setting.Source, Facing(setting, way), setting.Panels.Without(Panel)).Link;
        return new LawEvaluation(
        [
            new("middle of the beam", ComparedQuantity.Angle, BeamMiddle.Of(curve.Positions, curve.Links), 2.0 * Incidence,
                "half way between its half-power places; twice the angle of incidence in books"),
            new("beam width", ComparedQuantity.Angle, beam.Width, null, "between its half-power places, as the receiver is swung"),
            new("beside the straight way", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, straight), 0.0,
                "the same way without the plate; an endless mirror takes nothing away, one as large as a Fresnel zone gathers, up to 5 dB"),
        ]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you swing the receiver about the plate, the tone {Hearing.Goes(curve)} from {Hearing.At(curve, curve.Strongest)} "
        + $"off the source's direction to {Hearing.At(curve, curve.Weakest)}: {Hearing.Steps(curve)}.";

    // A turn that people would set: within 180° either way.
    private static Pose Wrapped(Pose pose) => pose with { Turn = Math.IEEERemainder(pose.Turn, Math.Tau) };

    // On the source's axis and looking back at it.
    private static ReceiverEnd Facing(Setting setting, double way)
    {
        Pose source = setting.Source.Pose;
        return setting.Receiver with { Pose = new Pose(source.ToBench(new Vector(way, 0.0, 0.0)), source.Turn + Math.PI, -source.Tilt, setting.Receiver.Pose.Roll) };
    }
}
