using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A closed box that seems to pass one way round only: a grid is hidden in it at 45° to its handle, and it is flipped over about that handle.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Box">Name of the panel that is the grid in the box; its upright is the handle.</param>
/// <remarks>Settings: nothing between; the box as held; the box flipped over; the box as held, with source and receiver in each other's places.</remarks>
public sealed record ClosedBoxDemonstration(string Name, string Box) : Demonstration(Name)
{
    private const double Slant = 0.25 * Math.PI;

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Held;

    /// <inheritdoc/>
    public override string Act => "source and receiver are rolled by 45°, and a closed box between them is flipped over about its handle";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => ClosedBoxLesson.Of();

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Moves.InBeam(plan, reach, Box);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        SourceEnd source = plan.Source with { Pose = plan.Source.Pose.Rolled(Slant) };
        ReceiverEnd receiver = plan.Receiver.RolledWith(plan.Source, Slant);
        IReadOnlyList<BenchPanel> held = plan.Panels.PutIn(Box);
        return
        [
            new Setting(0.0, "nothing", source, receiver, plan.Panels.Without(Box)),
            new Setting(1.0, "as held", source, receiver, held),
            new Setting(2.0, "flipped over", source, receiver, plan.Panels.PutIn(Box, pose => pose.Flipped())),
            new Setting(3.0, "ends exchanged", source with { Antenna = receiver.Antenna, Pose = receiver.Pose }, receiver with { Antenna = source.Antenna, Pose = source.Pose }, held),
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double heldDb = PlaneWaveDb(scene, curve.Points[1].Setting), flippedDb = PlaneWaveDb(scene, curve.Points[2].Setting);
        double open = curve.Points[0].Reading.Link, held = curve.Points[1].Reading.Link, flipped = curve.Points[2].Reading.Link;
        return new LawEvaluation(
        [
            new("as held", ComparedQuantity.Level, TextbookComparison.ErrorDb(held, open), heldDb, $"beside nothing between; the strips lie {Lie(heldDb, flippedDb)} the field"),
            new("flipped over", ComparedQuantity.Level, TextbookComparison.ErrorDb(flipped, open), flippedDb, $"the same; the strips lie {Lie(flippedDb, heldDb)} the field"),
            new("gained by the flip", ComparedQuantity.Level, TextbookComparison.ErrorDb(flipped, held), null, "what the audience hears"),
            new("gained by exchange", ComparedQuantity.Level, TextbookComparison.ErrorDb(curve.Points[3].Reading.Link, held), 0.0,
                "ends exchanged, box as held: reciprocity lets nothing change, so it is no one-way device"),
        ]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        string[] heard = [.. curve.Points.Select(p => InWords.Tone(p.Reading.Heard))];
        return $"With nothing between, the tone is {heard[0]}; with the box as held {heard[1]}, flipped over {heard[2]}: {Hearing.Steps(curve)}. "
            + $"With the box as held and the ends exchanged it is {heard[3]} again.";
    }

    // Which way the strips are hidden in the box is for the bench file to say.
    private static string Lie(double passedDb, double otherDb) => passedDb < otherDb ? "along" : "across";

    private double PlaneWaveDb(Scene scene, Setting setting) =>
        PlaneWave.PassedDb(scene.Plan.Frequency, setting.Source.Pose, setting.Panels.Named(Box));
}
