using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Panels.Sheets.Tables;

/// <summary>Lagrange's interpolation over six neighbours of an even row: where it begins and what each of them counts.</summary>
/// <remarks>The error of the polynomial of fifth degree falls with the sixth power of the spacing. [AbramowitzStegun1964] § 25.2.</remarks>
[InlineArray(Count)]
internal struct SixPoints
{
    internal const int Count = 6;

    private double _weight;

    /// <summary>The six of 0 … nodes − 1 around a place; at the ends of the row the first or last six.</summary>
    /// <param name="place">From 0 to nodes − 1.</param>
    /// <param name="nodes">≥ 6.</param>
    /// <param name="weights">What each counts.</param>
    /// <returns>The first of the six.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static int Around(double place, int nodes, out SixPoints weights)
    {
        int first = Math.Clamp((int)place - 2, 0, nodes - Count);
        double a = place - first, b = a - 1.0, c = a - 2.0, d = a - 3.0, e = a - 4.0, f = a - 5.0;
        double ab = a * b, cd = c * d, ef = e * f;
        weights = default;
        weights[0] = -b * cd * ef / 120.0;
        weights[1] = a * cd * ef / 24.0;
        weights[2] = -ab * d * ef / 12.0;
        weights[3] = ab * c * ef / 12.0;
        weights[4] = -ab * cd * f / 24.0;
        weights[5] = ab * cd * e / 120.0;
        return first;
    }
}
