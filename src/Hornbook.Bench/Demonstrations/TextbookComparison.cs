using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What textbook formulas would have said of a link, and how wrong each would be here.</summary>
/// <param name="Distance">Mouth centre to mouth centre, r [m].</param>
/// <param name="Link">The link as computed [-].</param>
/// <param name="FriisLink">Friis with the computed gains on the axes, both reflections and r, G_s G_r (λ/4πr)² [-].</param>
/// <param name="InverseSquareLink">The link at the reference distance, scaled by the inverse square of r [-].</param>
/// <param name="ReferenceDistance">The distance to which the inverse-square law is tied [m].</param>
/// <param name="SourceFarZone">2D²/λ of the source antenna, D the larger side of its mouth [m].</param>
/// <param name="ReceiverFarZone">2D²/λ of the receiving antenna [m].</param>
/// <param name="FarZoneErrorDb">Friis over the exact link at the greater of these two distances [dB]: what "far enough" still costs.</param>
public sealed record TextbookComparison(
    double Distance,
    double Link,
    double FriisLink,
    double InverseSquareLink,
    double ReferenceDistance,
    double SourceFarZone,
    double ReceiverFarZone,
    double FarZoneErrorDb)
{
    private const double LargestErrorDb = 200.0;

    /// <summary>Where the far zone begins for this pair, by the rule: the greater 2D²/λ [m].</summary>
    public double FarZone => Math.Max(SourceFarZone, ReceiverFarZone);

    /// <summary>How much too strong (positive) or too weak Friis's formula is here [dB]; at most 200 either way.</summary>
    public double FriisErrorDb => ErrorDb(FriisLink, Link);

    /// <summary>How much too strong (positive) or too weak the inverse-square law is here [dB]; at most 200 either way.</summary>
    public double InverseSquareErrorDb => ErrorDb(InverseSquareLink, Link);

    /// <summary>A promised link over a true one [dB], from −200 to 200: across polarisations the true one may be nothing.</summary>
    internal static double ErrorDb(double promised, double link) =>
        Math.Clamp(Decibels.FromRatio(promised / Math.Max(link, double.Epsilon)), -LargestErrorDb, LargestErrorDb);
}
