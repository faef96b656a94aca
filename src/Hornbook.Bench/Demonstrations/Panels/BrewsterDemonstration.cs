using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>Brewster's angle: a sheet is turned and the receiver swung along with its reflection, the fields lying flat, in the plane of incidence.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="From">First angle of incidence [rad]; negative on the other side.</param>
/// <param name="To">Last angle of incidence [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record BrewsterDemonstration(string Name, string Sheet, double From, double To, int Points) : Demonstration(Name)
{
    private const double Flat = 0.5 * Math.PI;

    // From the sheet to the near edge of the screen: the beam passes, wide as it is [m].
    private const double ScreenClear = 0.08;

    /// <summary>From the sheet's middle to the receiver's mouth [m]; null for as far as it stands.</summary>
    public double? Distance { get; init; }

    /// <summary>Name of a screen that stands square on the sheet's front and keeps the straight way from mouth to mouth shut; null without one.</summary>
    public string? Screen { get; init; }

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Incidence;

    /// <inheritdoc/>
    public override string Act => "with the fields lying flat, the sheet is turned and the receiver swung along with its reflection";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => BrewsterLesson.Of();

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.InProportion(plan, reach, Sheet);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan) => [.. Moves.Evenly(From, To, Points).Select(incidence => At(plan, incidence, Flat))];

    internal override Evaluation Evaluate(Scene scene, Curve curve) => BrewsterEvaluation.Of(scene, this, curve);

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation)
    {
        CurvePoint first = curve.Points[0], last = curve.Points[^1];
        return $"As sheet and receiver go round, the tone goes from {Hearing.At(curve, first)} through {Hearing.At(curve, curve.Weakest)} "
            + $"to {Hearing.At(curve, last)}: {Hearing.Steps(curve)}.";
    }

    /// <summary>What is set for an angle of incidence and a roll of both ends.</summary>
    internal Setting At(BenchPlan plan, double incidence, double roll)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector source = plan.Source.Pose.Position;
        Pose sheet = plan.Panels.Named(Sheet).Pose;
        Pose receiver = MirrorWay.Receiver(Arranged.AtDistance(plan.Receiver.Pose, sheet.Position, Distance), sheet, source, incidence);
        return new Setting(
            incidence,
            string.Empty,
            plan.Source with { Pose = plan.Source.Pose with { Roll = roll } },
            plan.Receiver with { Pose = receiver with { Roll = roll } },
            Screened(plan.Panels.PutIn(Sheet, pose => MirrorWay.Panel(pose, source, incidence))));
    }

    // The screen rides on the turning plate with the sheet, so it halves the angle between the two ways at every incidence.
    private IReadOnlyList<BenchPanel> Screened(IReadOnlyList<BenchPanel> panels)
    {
        if (Screen is null)
        {
            return panels;
        }

        Pose sheet = panels.Named(Sheet).Pose with { Roll = 0.0 };
        double middle = ScreenClear + (0.5 * panels.Named(Screen).Panel.Surface.Width);
        return panels.PutIn(Screen, pose => sheet.Shifted(new Vector(middle, 0.0, 0.0)).Turned(0.5 * Math.PI) with { Roll = pose.Roll });
    }
}
