using Hornbook.Bench.Demonstrations.Lessons;
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
public sealed record GridTurnDemonstration(string Name, string Grid, double From, double To, int Points)
    : GridRollDemonstration(Name, Grid, From, To, Points)
{
    // So near to it [rad] a hand calls it the same direction.
    private const double OfOneDirection = 10.0 * Math.PI / 180.0;

    /// <inheritdoc/>
    public override string Act => "the grid is rolled in its own plane";

    /// <inheritdoc/>
    public override Lesson Lesson(BenchPlan plan) => GridTurnLesson.Of();

    // A good grid passes the part of the field that lies across its strips, and the receiver takes the part of that which lies along its own:
    // cos² of the amplitude, cos⁴ of the power (common practice, no source).
    internal override Evaluation Evaluate(Scene scene, Curve curve)
    {
        MalusLaw malus = MalusLaw.Fit(curve.Positions, curve.Links);
        double strongest = curve.Strongest.Reading.Link;
        double tie = strongest / Math.Pow(malus.Share(curve.Strongest.Setting.At), 2.0);
        double[] law = [.. curve.Positions.Select(roll => tie * Math.Pow(malus.Share(roll), 2.0))];
        double openDb = Decibels.FromRatio(strongest / OpenLink(scene));
        return new LawEvaluation(
        [
            new("passes best", ComparedQuantity.Level, openDb, 0.0, "beside the bench without the grid; what goes round its edges adds or takes away"),
            new("strongest at", ComparedQuantity.Angle, malus.StrongestAt, null, "roll off the present one"),
            new("depth", ComparedQuantity.Level, TextbookComparison.ErrorDb(strongest, curve.Weakest.Reading.Link), null, "strongest over weakest; books have no limit"),
            new("off cos⁴", ComparedQuantity.Level, LawDeparture.LargestDb(curve.Links, law), 0.0, "at most, where the law asks for more than a hundredth"),
        ])
        {
            Law = law,
            LawName = "cos⁴ of the roll",
        };
    }

    internal override string Heard(Scene scene, Curve curve, Evaluation evaluation) =>
        $"As you roll the grid, the tone {Hearing.Goes(curve)} from {Hearing.At(curve, curve.Strongest)}, strips across the field, "
        + $"to {Hearing.At(curve, curve.Weakest)}{WhereWeakest(curve)}: {Hearing.Steps(curve)}.";

    // A small grid lets so much of the wave go round that least is left elsewhere: where that cancels what passes.
    private static string WhereWeakest(Curve curve)
    {
        double FromAlong(CurvePoint point) => Math.Abs(Math.IEEERemainder(point.Setting.At - curve.Strongest.Setting.At - (0.5 * Math.PI), Math.PI));
        CurvePoint along = curve.Points.MinBy(FromAlong)!;
        return FromAlong(curve.Weakest) <= OfOneDirection ? ", strips along it"
            : FromAlong(along) <= OfOneDirection ? $" and not where they lie along it, {Hearing.At(curve, along)}, since some of the wave goes round the grid"
            : string.Empty;
    }
}
