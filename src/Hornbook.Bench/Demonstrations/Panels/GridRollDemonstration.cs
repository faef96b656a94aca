using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A grid between the antennas is rolled in its own plane.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Grid">Name of the grid.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public abstract record GridRollDemonstration(string Name, string Grid, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Roll;

    /// <inheritdoc/>
    public override IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Moves.InBeam(plan, reach, Grid);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Setting> Course(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ReceiverEnd listening = Listening(plan.Receiver);
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, listening, plan.Panels.PutIn(Grid, pose => pose.Rolled(angle))))
        ];
    }

    /// <summary>How the receiver is held meanwhile.</summary>
    private protected virtual ReceiverEnd Listening(ReceiverEnd receiver) => receiver;

    /// <summary>The link of the bench as it stands, the grid away [-].</summary>
    private protected double OpenLink(Scene scene) => scene.Read(scene.Plan.Source, scene.Plan.Receiver, scene.Plan.Panels.Without(Grid)).Link;

    /// <summary>Cosine of the angle between the strips and the source's field [-].</summary>
    private protected double AlongStrips(Setting setting)
    {
        BenchPanel grid = setting.Panels.Named(Grid);
        double inFrame = grid.Panel.Sheet is TurnedSheet turned ? turned.Angle : 0.0;
        return Vector.Dot(grid.Pose.Rolled(inFrame).Up, setting.Source.Pose.Up);
    }
}
