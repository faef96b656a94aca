using MathNet.Numerics.Statistics;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>How a quantity scatters over many built pieces; unit as the quantity.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="StandardDeviation">Standard deviation.</param>
/// <param name="Lower">2.5 % of the pieces are below.</param>
/// <param name="Upper">2.5 % of the pieces are above.</param>
public sealed record Spread(double Mean, double StandardDeviation, double Lower, double Upper)
{
    /// <summary>The spread of a sample; the 95 % interval is the probabilistically symmetric one [Jcgm101].</summary>
    internal static Spread Of(IReadOnlyList<double> sample) => new(
        sample.Mean(), sample.StandardDeviation(), sample.Quantile(0.025), sample.Quantile(0.975));
}
