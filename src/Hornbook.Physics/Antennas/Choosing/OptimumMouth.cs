using Hornbook.Physics.Antennas.ClosedForm;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>The mouth of highest gain for a length.</summary>
public static class OptimumMouth
{
    // Beyond this lag the gain falls in either plane, for any throat.
    private const double MostLag = 0.6;

    /// <summary>The horn of highest gain for its length, by the closed form.</summary>
    /// <param name="feed">What it is for.</param>
    /// <param name="length">Throat to mouth, L [m]; finite, &gt; 0.</param>
    /// <param name="openness">Share of the best lag in each plane that is used [-]; 1 for the best mouth, 0 for no flare at all.</param>
    /// <returns>
    /// Both flares begin at the throat plane. Gain is flat at its maximum: the best exact mouth has at most 0.01 dB more beyond two wavelengths
    /// and 0.05 dB more for shorter horns, less than the model itself is good for.
    /// </returns>
    /// <remarks>
    /// With q = D(D − d)/(8λL), D the mouth's and d the guide's side, D R(q) is largest where ℓ/ρ = (W − d)/2W, W = √(d² + 32qλL):
    /// Eq. choosing-a-horn (3). Without a throat (d → 0) the phase centre of the best horn lies half-way to its apex.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Horn ForLength(Feed feed, double length, double openness = 1.0)
    {
        ArgumentNullException.ThrowIfNull(feed);
        Require.Positive(length);
        Require.Within(openness, 0.0, 1.0);
        double area = feed.Wavelength * length;
        double s = openness * BestLag(LineTaper.Uniform, feed.Guide.Height, area);
        double t = openness * BestLag(LineTaper.Cosine, feed.Guide.Width, area);
        return feed.Horn(Side(feed.Guide.Width, t, area), Side(feed.Guide.Height, s, area), length);
    }

    /// <summary>The side of a mouth from its lag, D = (d + √(d² + 32qλL))/2 [m].</summary>
    internal static double Side(double throat, double lag, double area) => Math.Max(throat, 0.5 * (throat + Root(throat, lag, area)));

    private static double BestLag(LineTaper taper, double throat, double area)
    {
        double Slope(double lag)
        {
            double root = Root(throat, lag, area);
            return new PhasedLine(taper, lag).PhaseCentreShare - ((root - throat) / (2.0 * root));
        }

        return Brent.FindRoot(Slope, 1e-9, MostLag, 1e-12, 200);
    }

    private static double Root(double throat, double lag, double area) => Math.Sqrt((throat * throat) + (32.0 * lag * area));
}
