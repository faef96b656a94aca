using System.Collections.Concurrent;
using Hornbook.Physics.Panels.Sheets.Tables;
using MathNet.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>The transforms of the functions in which the currents of a strip are written, at the whole orders of the grid.</summary>
/// <remarks>
/// With x = 2s/w over the strip: along it T_n(x)/√(1−x²), across it √(1−x²) U_n(x). Their transforms, Eq. strip-grids (2), are Bessel functions of q = πmw/p without the
/// factor jⁿ, which the equations do not need, and times √(w/2p). They depend on w/p only.
/// </remarks>
internal sealed class StripFunctions
{
    // Up to here the sums over the orders are done one by one: q so large that only its leading term counts, and enough orders that the
    // slowest beat between orders and strips, of p/(p−w) orders, is over.
    private const double LargestArgument = 2000.0;
    private const double MostBeats = 100.0;

    private const int FewestFunctions = 6;
    private const double NarrowGap = 0.15;
    private const double PerRootOfFlatness = 0.9;
    private const double MostForLayer = 10.0;

    // From here on a Bessel function follows from the two before it without loss.
    private const double RecurrenceArgument = 60.0;

    private static readonly Recent<(double Share, int Count), StripFunctions> Known = new(16);

    private readonly ConcurrentDictionary<(int Above, int Carried), StripSums> _sums = new();
    private readonly double[] _across;
    private readonly double[] _along;

    private StripFunctions(double share, int count)
    {
        Share = share;
        Count = count;
        Orders = (int)Math.Ceiling(Math.Max(LargestArgument / (Math.PI * share), MostBeats / (1.0 - share)));
        _across = new double[(Orders + 1) * Count];
        _along = new double[(Orders + 1) * Count];
        Parallel.For(0, Orders + 1, Fill);
    }

    /// <summary>w/p.</summary>
    internal double Share { get; }

    /// <summary>How many functions for each direction of the current.</summary>
    internal int Count { get; }

    /// <summary>The highest order that is tabulated.</summary>
    internal int Orders { get; }

    /// <summary>How many functions leave some 1e-6 of the wave.</summary>
    /// <param name="share">w/p, between 0 and 1.</param>
    /// <param name="flatness">Width of a strip over the thickness of the layer that it lies on; 0 in air.</param>
    /// <remarks>
    /// Measured against twice as many. Six do until gaps are as narrow as 15 % of the period; then the edges of neighbours feel each other. On a thin layer
    /// currents change within its thickness from the edge; on a very thin one that matters as little as the layer itself.
    /// </remarks>
    internal static int CountFor(double share, double flatness)
    {
        double narrow = FewestFunctions * Math.Max(1.0, Math.Sqrt(NarrowGap / (1.0 - share)));
        return (int)Math.Ceiling(narrow + Math.Min(PerRootOfFlatness * Math.Sqrt(flatness), MostForLayer));
    }

    /// <summary>The transforms for a share of metal and a number of functions.</summary>
    internal static StripFunctions For(double share, int count) => Known.Of((share, count), key => new StripFunctions(key.Share, key.Count));

    /// <summary>The sums over the orders above some.</summary>
    /// <param name="above">Orders up to this one, on both sides, are left out.</param>
    /// <param name="carried">From this order on a polynomial carries.</param>
    internal StripSums Sums(int above, int carried) => _sums.GetOrAdd((above, carried), key => new StripSums(this, key.Above, key.Carried));

    /// <summary>Of the currents across the strips, at an order that is not negative; at −m they are the same times (−1)ⁿ.</summary>
    internal ReadOnlySpan<double> Across(int order) => _across.AsSpan(order * Count, Count);

    /// <summary>Of the currents along the strips.</summary>
    internal ReadOnlySpan<double> Along(int order) => _along.AsSpan(order * Count, Count);

    private void Fill(int order)
    {
        double q = Math.PI * order * Share, scale = Math.PI * Math.Sqrt(0.5 * Share);
        Span<double> bessel = stackalloc double[Count + 1];
        FillBessel(q, bessel);
        for (int n = 0; n < Count; n++)
        {
            double across = order > 0 ? (n + 1) * bessel[n + 1] / q : n == 0 ? 0.5 : 0.0;
            _across[(order * Count) + n] = scale * across;
            _along[(order * Count) + n] = scale * bessel[n];
        }
    }

    private static void FillBessel(double q, Span<double> values)
    {
        for (int n = 0; n < values.Length; n++)
        {
            values[n] = n < 2 || q < RecurrenceArgument ? SpecialFunctions.BesselJ(n, q) : (2.0 * (n - 1) / q * values[n - 1]) - values[n - 2];
        }
    }
}
