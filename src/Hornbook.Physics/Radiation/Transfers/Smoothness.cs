namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>How many nodes a field needs along one side of a box.</summary>
/// <remarks>
/// Eq. radiation (14): a function that is analytic inside the Bernstein ellipse of parameter ρ around −1…1 and bounded there by M is interpolated by n
/// Chebyshev nodes to 4 M ρ^{1−n}/(ρ−1) [Trefethen2013]. A phase zt + ζt²/2 has M = e^{z(ρ−1/ρ)/2 + ζ(ρ²−1/ρ²)/8}; and an ellipse may reach no source, the
/// nearest of which is d half-sides away: ρ &lt; d + √(d²+1). The factor 4ρ/(ρ−1) is left out: it is the worst source's, and many add up at random.
/// </remarks>
internal static class Smoothness
{
    // Of the ellipse up to the nearest source, the part in which its 1/R³ has not grown much.
    private const double Reach = 0.8;

    private static readonly double[] Ellipses = [.. Enumerable.Range(0, 24).Select(i => 1.25 * Math.Pow(1.15, i))];
    private static readonly double[] Logarithms = Array.ConvertAll(Ellipses, Math.Log);
    private static readonly double[] Growths = Array.ConvertAll(Ellipses, e => 0.5 * (e - (1.0 / e)));
    private static readonly double[] BentGrowths = Array.ConvertAll(Ellipses, e => 0.125 * ((e * e) - (1.0 / (e * e))));

    /// <summary>The number of nodes; none when more would be needed than there are rules for.</summary>
    /// <param name="steady">Slope of the phase of any source in the middle, times half of the side, z [rad]; ≥ 0.</param>
    /// <param name="bent">By how much that slope changes towards the ends, times half of the side, ζ [rad]; ≥ 0.</param>
    /// <param name="distance">Distance of the nearest source over half of the side, d [-]; may be infinite.</param>
    /// <param name="digits">−ln of the tolerance [-].</param>
    internal static int? Nodes(double steady, double bent, double distance, double digits)
    {
        if (double.IsPositiveInfinity(distance))
        {
            return 1;
        }

        double largest = Reach * (distance + Math.Sqrt((distance * distance) + 1.0));
        double fewest = double.PositiveInfinity;
        for (int i = 0; i < Ellipses.Length && Ellipses[i] <= largest; i++)
        {
            fewest = Math.Min(fewest, (digits + (steady * Growths[i]) + (bent * BentGrowths[i])) / Logarithms[i]);
        }

        int nodes = (int)Math.Min(Math.Ceiling(fewest), ChebyshevRule.Most + 1);
        return nodes <= ChebyshevRule.Most ? Math.Max(nodes, 1) : null;
    }
}
