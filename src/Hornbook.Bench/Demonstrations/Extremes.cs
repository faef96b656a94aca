using MathNet.Numerics.Interpolation;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Where a curve has its hills and valleys between its ends, read off a cubic spline.</summary>
internal static class Extremes
{
    /// <summary>The places of the maxima, in rising order.</summary>
    /// <param name="at">Places, length n ≥ 3, rising.</param>
    /// <param name="levels">Heights there, length n; finite.</param>
    internal static double[] Maxima(double[] at, double[] levels)
    {
        CubicSpline spline = CubicSpline.InterpolateNaturalSorted(at, levels);
        return [.. Enumerable.Range(1, Math.Max(0, at.Length - 2)).Where(i => levels[i] > levels[i - 1] && levels[i] >= levels[i + 1]).Select(i => Level(spline, at, i))];
    }

    /// <summary>The places of the minima, in rising order.</summary>
    /// <inheritdoc cref="Maxima"/>
    internal static double[] Minima(double[] at, double[] levels) => Maxima(at, [.. levels.Select(level => -level)]);

    private static double Level(CubicSpline spline, double[] at, int i) =>
        Brent.TryFindRoot(spline.Differentiate, at[i - 1], at[i + 1], 1e-12, 100, out double place) ? place : at[i];
}
