using Hornbook.Physics;
using MathNet.Numerics.Interpolation;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>The middle of a beam whose top may be split: half way between the outermost places with half of the greatest power.</summary>
internal static class BeamMiddle
{
    /// <summary>The middle; null where the curve does not fall to half on both sides.</summary>
    /// <param name="at">Places, length n ≥ 3, in order.</param>
    /// <param name="powers">Powers there, length n, &gt; 0.</param>
    internal static double? Of(double[] at, double[] powers)
    {
        double[] places = [.. at], levels = [.. powers.Select(power => Decibels.FromRatio(2.0 * power / powers.Max()))];
        Array.Sort(places, levels);
        int first = Array.FindIndex(levels, level => level >= 0.0), last = Array.FindLastIndex(levels, level => level >= 0.0);
        if (first < 1 || last >= places.Length - 1)
        {
            return null;
        }

        CubicSpline spline = CubicSpline.InterpolateNaturalSorted(places, levels);
        return 0.5 * (Brent.FindRoot(spline.Interpolate, places[first - 1], places[first]) + Brent.FindRoot(spline.Interpolate, places[last], places[last + 1]));
    }
}
