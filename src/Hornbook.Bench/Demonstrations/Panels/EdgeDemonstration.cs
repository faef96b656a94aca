using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>One edge: a plate is pushed from the side until it shuts the way, and the shadow does not begin where it should.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the plate.</param>
/// <param name="From">First shift off its place, to its own left [m].</param>
/// <param name="To">Last shift [m].</param>
/// <param name="Points">How many places; ≥ 3.</param>
public sealed record EdgeDemonstration(string Name, string Panel, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Shift;

    /// <inheritdoc/>
    public override string Act => "a plate is pushed across the way, one edge first";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => EdgeLesson.Of();

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.InProportion(plan, reach, Panel);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(shift => new Setting(
                shift, string.Empty, plan.Source, plan.Receiver, plan.Panels.PutIn(Panel, pose => pose.Shifted(new Vector(0.0, shift, 0.0)))))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double open = scene.Read(scene.Plan.Source, scene.Plan.Receiver, scene.Plan.Panels.Without(Panel)).Link;
        double[] v = [.. curve.Points.Select(point => KnifeEdge.Parameter(point.Setting.Panels.Named(Panel), point.Setting, wavelength))];
        double[] law = [.. v.Select(parameter => open * KnifeEdge.Power(parameter))];
        double[] overOpenDb = [.. curve.Links.Select(link => Decibels.FromRatio(link / open))];
        bool isCovered = v.Min() < KnifeEdge.FirstMaximumAt && v.Max() > 0.0;
        return new LawEvaluation(
        [
            new("on the line of sight", ComparedQuantity.Level, v.Min() <= 0.0 && v.Max() >= 0.0 ? MathNet.Numerics.Interpolate.Linear(v, overOpenDb).Interpolate(0.0) : null, Decibels.FromRatio(0.25),
                "beside the open bench, the edge just touching the line from mouth to mouth: half the field, a quarter of the power"),
            new("brightest", ComparedQuantity.Level, isCovered ? Decibels.FromRatio(curve.Strongest.Reading.Link / open) : null, Decibels.FromRatio(KnifeEdge.FirstMaximum),
                "beside the open bench: with the plate near, there is more than without; horns that do not send evenly make it less"),
            new("brightest at v", ComparedQuantity.Number, isCovered ? v[curve.Points.ToList().IndexOf(curve.Strongest)] : null, KnifeEdge.FirstMaximumAt,
                "v = 2 √(Δ/λ), Δ what the way by the edge is longer; negative on the lit side"),
            new("off Fresnel's law", ComparedQuantity.Level, LawDeparture.LargestDb(curve.Links, law), 0.0, "at most, where the law asks for more than a hundredth"),
        ])
        {
            Law = law,
            LawName = "Fresnel's straight edge",
        };
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you push the plate across, the tone does not fall at once: at its strongest it is {Hearing.At(curve, curve.Strongest)}, "
        + $"and the weakest {Hearing.At(curve, curve.Weakest)}: {Hearing.Steps(curve)}.";
}
