using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>One panel after another is put into the beam, after the open bench: what stops the wave, and what does not.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panels">Names of the panels in the order shown; ≥ 1.</param>
public sealed record PanelChangeDemonstration(string Name, IReadOnlyList<string> Panels) : Demonstration(Name)
{
    private const string Nothing = "nothing";

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Panel;

    /// <inheritdoc/>
    public override string Act => "one panel after another is put in";

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            new Setting(0.0, Nothing, plan.Source, plan.Receiver, plan.Panels),
            .. Panels.Select((name, i) => new Setting(i + 1, name, plan.Source, plan.Receiver, plan.Panels.PutIn(name)))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double open = curve.Points[0].Reading.Link;
        IEnumerable<Comparison> comparisons = curve.Points.Skip(1).Select(point => new Comparison(
            point.Setting.Label,
            ComparedQuantity.Level,
            Decibels.FromRatio(point.Reading.Link / open),
            PlaneWaveDb(scene, point.Setting),
            "beside the open bench; books have an endless sheet and a plane wave"));
        return new LawEvaluation([.. comparisons]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        IEnumerable<string> heard = curve.Points.Select(p => $"{InWords.Tone(p.Reading.Heard)} with {Hearing.Place(curve, p)}");
        return $"The tone is {InWords.Joined([.. heard])}: {Hearing.Steps(curve)} between the weakest and the strongest.";
    }

    // The sheet's own response to a plane wave along the source's axis with the source's field; −200 dB for metal.
    private static double PlaneWaveDb(Scene scene, Setting setting)
    {
        BenchPanel panel = setting.Panels.First(p => p.Name == setting.Label);
        Vector travel = setting.Source.Pose.Forward;
        Vector across = panel.Pose.Left, along = panel.Pose.Up;
        SheetFace face = Vector.Dot(travel, panel.Pose.Forward) >= 0.0 ? SheetFace.Back : SheetFace.Front;
        TangentialMatrix passed = panel.Panel.Sheet.At(scene.Plan.Frequency).Arriving(face, Vector.Dot(travel, across), Vector.Dot(travel, along)).Transmission;
        (double u, double v) = (Vector.Dot(setting.Source.Pose.Up, across), Vector.Dot(setting.Source.Pose.Up, along));
        (Complex first, Complex second) = passed.Of(u, v);
        double share = (((first * u) + (second * v)) / ((u * u) + (v * v))).Magnitude;
        return TextbookComparison.ErrorDb(share * share, 1.0);
    }
}
