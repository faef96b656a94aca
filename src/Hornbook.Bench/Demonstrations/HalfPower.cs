using Hornbook.Physics;
using MathNet.Numerics.Interpolation;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Where a curve of power over angle is strongest and how wide it is at half of that.</summary>
/// <param name="PeakAt">Angle of the strongest [rad].</param>
/// <param name="Width">Full angle between the half-power points [rad]; null where the curve does not reach both.</param>
/// <remarks>Read off a cubic spline through the levels in decibels, which are smooth about the main beam.</remarks>
public sealed record HalfPower(double PeakAt, double? Width)
{
    private static readonly double HalfDb = Decibels.FromRatio(0.5);

    /// <summary>Reads a curve.</summary>
    /// <param name="angles">[rad], length n ≥ 3, rising or falling.</param>
    /// <param name="powers">In any unit, length n, ≥ 0.</param>
    public static HalfPower Of(double[] angles, double[] powers)
    {
        ArgumentNullException.ThrowIfNull(angles);
        double[] levelsDb = [.. powers.Select(p => Decibels.FromRatio(Math.Max(p, double.Epsilon)))];
        double[] ordered = [.. angles];
        Array.Sort(ordered, levelsDb);
        CubicSpline spline = CubicSpline.InterpolateNaturalSorted(ordered, levelsDb);
        double peak = PeakOf(spline, ordered, Array.IndexOf(levelsDb, levelsDb.Max()));
        double halfDb = spline.Interpolate(peak) + HalfDb;
        double? right = Crossing(spline, halfDb, peak, ordered.Where(a => a > peak));
        double? left = Crossing(spline, halfDb, peak, ordered.Reverse().Where(a => a < peak));
        return new HalfPower(peak, right - left);
    }

    /// <summary>Where the spline is level between the neighbours of the strongest sample; that sample where it is not level there.</summary>
    /// <remarks>The library's own stationary points lose four digits where the cubic term of a piece is nearly nothing, as at a peak.</remarks>
    private static double PeakOf(CubicSpline spline, double[] angles, int strongest)
    {
        double from = angles[Math.Max(0, strongest - 1)];
        double to = angles[Math.Min(angles.Length - 1, strongest + 1)];
        return Brent.TryFindRoot(spline.Differentiate, from, to, 1e-12, 100, out double peak) ? peak : angles[strongest];
    }

    private static double? Crossing(CubicSpline spline, double levelDb, double peak, IEnumerable<double> outwards)
    {
        double inner = peak;
        foreach (double outer in outwards)
        {
            if (spline.Interpolate(outer) <= levelDb)
            {
                return Brent.FindRoot(a => spline.Interpolate(a) - levelDb, Math.Min(inner, outer), Math.Max(inner, outer), 1e-12, 100);
            }

            inner = outer;
        }

        return null;
    }
}
