using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>One panel after another is put into the beam, after the open bench: what stops the wave, and what does not.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panels">Names of the panels in the order shown; ≥ 1.</param>
public sealed record PanelChangeDemonstration(string Name, IReadOnlyList<string> Panels) : Demonstration(Name)
{
    private const string Nothing = "nothing";

    /// <summary>Whether the same panels are put in in the same order.</summary>
    public bool Equals(PanelChangeDemonstration? other) => base.Equals(other) && Panels.SequenceEqual(other.Panels);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), Panels.Count);

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Panel;

    /// <inheritdoc/>
    public override string Act => "one panel after another is put in";

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        IReadOnlyList<BenchPanel> cleared = Panels.Aggregate(plan.Panels, (panels, name) => panels.Without(name));
        return
        [
            new Setting(0.0, Nothing, plan.Source, plan.Receiver, cleared),
            .. Panels.Select((name, i) => new Setting(i + 1, name, plan.Source, plan.Receiver, cleared.PutIn(name)))
        ];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => PanelChangeLesson.Of();

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double open = curve.Points[0].Reading.Link;
        IEnumerable<Comparison> comparisons = curve.Points.Skip(1).Select(point => new Comparison(
            point.Setting.Label,
            ComparedQuantity.Level,
            Decibels.FromRatio(point.Reading.Link / open),
            PlaneWave.PassedDb(scene.Plan.Frequency, point.Setting.Source.Pose, point.Setting.Panels.Named(point.Setting.Label)),
            "beside the open bench; books have an endless sheet and a plane wave"));
        return new LawEvaluation([.. comparisons]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        IEnumerable<string> heard = curve.Points.Select(p => $"{InWords.Tone(p.Reading.Heard)} with {Hearing.Place(curve, p)}");
        return $"The tone is {InWords.Joined([.. heard])}: {Hearing.Steps(curve)} between the weakest and the strongest.";
    }
}
