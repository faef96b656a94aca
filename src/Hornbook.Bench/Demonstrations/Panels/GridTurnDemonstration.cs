using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>A grid between aligned antennas is rolled in its own plane: strips along the electric field stop the wave, strips across it let it pass.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Grid">Name of the grid.</param>
/// <param name="From">First roll off its present one [rad].</param>
/// <param name="To">Last roll off its present one [rad].</param>
/// <param name="Points">How many angles; ≥ 3.</param>
public sealed record GridTurnDemonstration(string Name, string Grid, double From, double To, int Points) : Demonstration(Name)
{
    /// <inheritdoc/>
    public override Abscissa Abscissa => Abscissa.Roll;

    /// <inheritdoc/>
    public override string Act => "the grid is rolled in its own plane";

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
        return
        [
            .. Moves.Evenly(From, To, Points).Select(angle => new Setting(
                angle, string.Empty, plan.Source, plan.Receiver, plan.Panels.PutIn(Grid, pose => pose.Rolled(angle))))
        ];
    }

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new Lesson(
            "Stand the grid close in front of the source's mouth, two or three wavelengths away, so that the whole beam goes through it and little goes round its edges.",
            "A grid that is too small or too far from the mouth: the wave that goes round it does not mind how the strips lie. A hand that reaches into the beam.",
            "The wave is a rope that swings up and down; it slips between upright pickets, so upright strips let an upright wave pass.",
            "It is the other way round: the tone is gone when the strips lie along the field and full when they lie across it. A wave of fields has no width that could get stuck between pickets.",
            "The wave shakes the tiny charges in the metal to and fro. Along a strip they have room to run, and running they make a wave of their own that cancels the first one behind the grid "
            + "and throws it back. Across a narrow strip they have no room, so nothing happens and the wave walks through.",
            "The strips short the component of E along them, E_∥ = 0 at the metal; currents J = n × (H₊ − H₋) re-radiate it. The component across passes: amplitude cos φ of the field at the grid, "
            + "of which the receiver takes cos φ again, so P = P₀ cos⁴ φ. With period well below half a wavelength no other beams leave the grid.");
    }

    // A good grid passes the part of the field that lies across its strips, and the receiver takes the part of that which lies along its own:
    // cos² of the amplitude, cos⁴ of the power (common practice, no source).
    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        MalusLaw malus = MalusLaw.Fit(curve.Positions, curve.Links);
        double strongest = curve.Strongest.Reading.Link;
        double[] law = [.. curve.Positions.Select(roll => Math.Pow(malus.Share(roll), 2.0))];
        double tie = strongest / Math.Pow(malus.Share(curve.Strongest.Setting.At), 2.0);
        double openDb = Decibels.FromRatio(strongest / scene.Read(scene.Plan.Source, scene.Plan.Receiver).Link);
        return new LawEvaluation(
        [
            new("passes best", ComparedQuantity.Level, openDb, 0.0, "beside the bench without the grid; what goes round its edges adds or takes away"),
            new("strongest at", ComparedQuantity.Angle, malus.StrongestAt, null, "roll off the present one"),
            new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(strongest, curve.Weakest.Reading.Link), null, "strongest over weakest; books have no limit"),
            new("off cos⁴", ComparedQuantity.Level, LawDeparture.LargestDb(curve.Links, [.. law.Select(l => l * tie)]), 0.0, "at most, where the law asks for more than a hundredth"),
        ])
        {
            Law = [.. law.Select(l => l * tie)],
            LawName = "cos⁴ of the roll",
        };
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you roll the grid, the tone {Hearing.Goes(curve)} from {InWords.Tone(curve.Strongest.Reading.Heard)} at {Hearing.Place(curve, curve.Strongest)}, strips across the field, "
        + $"to {InWords.Tone(curve.Weakest.Reading.Heard)} at {Hearing.Place(curve, curve.Weakest)}, strips along it: {Hearing.Steps(curve)}.";
}
