using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The distance law that the bench will show, P ∝ 1/(r + r₀)ⁿ with r from mouth to mouth.</summary>
/// <param name="Exponent">Fitted n with the apparent origin free [-].</param>
/// <param name="ApparentOrigin">Fitted r₀ [m]: how far behind the mouths, together, the waves seem to begin and end.</param>
/// <param name="ResidualDb">Rms distance of the curve from that fit [dB].</param>
/// <param name="MouthExponent">Fitted n where distances are taken from mouth to mouth, r₀ = 0 [-]: what a ruler and logarithmic paper give.</param>
/// <param name="InverseSquareOrigin">Fitted r₀ where n = 2 is imposed [m]: where the ruler's zero has to lie for the inverse-square law to hold.</param>
/// <param name="Textbook">For each point, what textbooks would have said; the inverse-square law is tied to the farthest point.</param>
public sealed record DistanceEvaluation(
    double Exponent,
    double ApparentOrigin,
    double ResidualDb,
    double MouthExponent,
    double InverseSquareOrigin,
    IReadOnlyList<TextbookComparison> Textbook) : Evaluation
{
    internal static DistanceEvaluation Of(Scene scene, Curve curve)
    {
        double[] distances = curve.Positions;
        double[] links = curve.Links;
        DistanceLaw free = DistanceLaw.Fit(distances, links);
        CurvePoint farthest = curve.Points.MaxBy(p => p.Setting.At)!;
        TextbookLink textbook = TextbookLink.TiedTo(scene, farthest.Setting.Source, farthest.Setting.Receiver);
        return new DistanceEvaluation(
            free.Exponent,
            free.Origin,
            free.ResidualDb,
            DistanceLaw.FromMouths(distances, links).Exponent,
            DistanceLaw.InverseSquare(distances, links).Origin,
            [.. curve.Points.Select(p => textbook.Beside(p.Setting.Source, p.Setting.Receiver, p.Reading.Link))]);
    }
}
