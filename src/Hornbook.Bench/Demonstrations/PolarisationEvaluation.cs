namespace Hornbook.Bench.Demonstrations;

/// <summary>The polarisation law that the bench will show, beside the cos² law of Malus.</summary>
/// <param name="StrongestAt">Roll off the present one at which most is received [rad].</param>
/// <param name="WeakestAt">Roll off the present one at which least is received [rad].</param>
/// <param name="DepthDb">Strongest over weakest received power [dB]; at most 200.</param>
/// <param name="LawErrorDb">Greatest departure from cos² (of the roll from the strongest) where that law asks for more than 1/100 [dB].</param>
public sealed record PolarisationEvaluation(double StrongestAt, double WeakestAt, double DepthDb, double LawErrorDb) : Evaluation
{
    internal static PolarisationEvaluation Of(Curve curve)
    {
        MalusLaw law = MalusLaw.Fit(curve.Positions, curve.Links);
        return new PolarisationEvaluation(
            law.StrongestAt,
            curve.Weakest.Setting.At,
            TextbookComparison.ErrorDb(curve.Strongest.Reading.Link, curve.Weakest.Reading.Link),
            law.LargestErrorDb(curve.Positions, curve.Links));
    }
}
