using Hornbook.Bench.Demonstrations.Lessons;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A dish gathers the wave: the receiver looks into it, and is moved along its axis through the focus.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Panel">Name of the dish, its hollow side towards the source.</param>
/// <param name="From">First distance from the middle of the dish to the receiver [m]; &gt; 0.</param>
/// <param name="To">Last distance [m]; &gt; 0.</param>
/// <param name="Points">How many distances; ≥ 3.</param>
public sealed record DishDemonstration(string Name, string Panel, double From, double To, int Points) : Demonstration(Name)
{
    /// <summary>What a dish commonly makes of its area [-]: common practice, no source.</summary>
    internal const double CommonEfficiency = 0.55;

    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.FromPanel;

    /// <inheritdoc/>
    public override string Act => "the receiver looks into a dish and is moved along its axis";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => DishLesson.Of();

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach) => Arranged.AtReach(plan, reach, Panel);

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Pose dish = plan.Panels.Named(Panel).Pose;
        return
        [
            .. Moves.Evenly(From, To, Points).Select(distance => new Setting(
                distance, string.Empty, plan.Source,
                plan.Receiver with { Pose = new Pose(dish.ToBench(new Vector(distance, 0.0, 0.0)), dish.Turn + Math.PI, -dish.Tilt, plan.Receiver.Pose.Roll) },
                plan.Panels.PutIn(Panel)))
        ];
    }

    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        BenchPanel dish = scene.Plan.Panels.Named(Panel);
        double wavelength = FreeSpace.Wavelength(scene.Plan.Frequency);
        double away = (dish.Pose.Position - scene.Plan.Source.Pose.Position).Length;
        double whole = Math.Pow(Math.PI * dish.Panel.Surface.Width / wavelength, 2.0);
        double over = curve.Strongest.Reading.Link / Alone(scene, curve.Strongest.Setting).Link;
        double gain = over * scene.Receiver.RealisedGain;
        return new LawEvaluation(
        [
            new("gain", ComparedQuantity.Level, Decibels.FromRatio(gain), Decibels.FromRatio(CommonEfficiency * whole), "0.55 (πD/λ)² in books; a source as near as this costs some of it"),
            new("efficiency", ComparedQuantity.Number, gain / whole, CommonEfficiency, "of its round area; what runs over its edge, and what lights it unevenly, is lost. The shadow of the receiver is left out"),
            new("over the receiver alone", ComparedQuantity.Level, Decibels.FromRatio(over), null, "the same receiver facing the source where the dish stands"),
            new("strongest at", ComparedQuantity.Length, curve.Strongest.Setting.At, Focus(dish.Panel.Surface, away), "from the middle of the dish; 1/f − 1/r in books, as the source is not endlessly far"),
        ]);
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"Facing the source the receiver alone gives {InWords.Tone(Alone(scene, curve.Strongest.Setting).Heard)}; looking into the dish {Hearing.At(curve, curve.Strongest)} from its middle, "
        + $"and off the focus {Hearing.At(curve, curve.Weakest)}: {Hearing.Steps(curve)}.";

    // The receiver where the dish stands, facing the source.
    private Reading Alone(Scene scene, Setting setting)
    {
        Pose dish = setting.Panels.Named(Panel).Pose;
        return scene.Read(setting.Source, setting.Receiver with { Pose = new Pose(dish.Position, dish.Turn, dish.Tilt, setting.Receiver.Pose.Roll) }, setting.Panels.Without(Panel));
    }

    // 1/b = 1/f − 1/r (common practice, no source).
    private static double? Focus(PanelSurface surface, double away) => surface is DishSurface dish
        ? 1.0 / ((1.0 / dish.FocalLength) - (1.0 / away))
        : null;
}
