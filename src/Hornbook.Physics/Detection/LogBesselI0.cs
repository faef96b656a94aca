using MathNet.Numerics;

namespace Hornbook.Physics.Detection;

/// <summary>ln I0(x), the logarithm of the modified Bessel function: what a sine does to an exponential.</summary>
/// <remarks>I0 alone will not do: at small x the 1 swallows the signal, and beyond x = 713 it overflows.</remarks>
internal static class LogBesselI0
{
    private const double SeriesBelow = 1.0;
    private const double ScaledAbove = 500.0;

    /// <summary>ln I0(x) to about 1e-13 of itself, for x ≥ 0.</summary>
    internal static double Of(double x) => x switch
    {
        < SeriesBelow => SpecialFunctions.Log1p(ExcessOverOne(x)),
        < ScaledAbove => Math.Log(SpecialFunctions.BesselI0(x)),
        _ => x + Math.Log(SpecialFunctions.BesselIScaled(0.0, x)),
    };

    /// <summary>d/dx ln I0(x) = I1(x)/I0(x), for x ≥ 0.</summary>
    internal static double Slope(double x) => x < ScaledAbove
        ? SpecialFunctions.BesselI1(x) / SpecialFunctions.BesselI0(x)
        : SpecialFunctions.BesselIScaled(1.0, x) / SpecialFunctions.BesselIScaled(0.0, x);

    /// <summary>The x ≥ 0 with ln I0(x) = y, for y ≥ 0.</summary>
    /// <remarks>ln I0 is convex and rises, so that Newton's steps come down to the root from above after the first one.</remarks>
    internal static double Inverse(double y)
    {
        if (y <= 0.0)
        {
            return 0.0;
        }

        double x = y < 1.0 ? 2.0 * Math.Sqrt(y) : y + (0.5 * Math.Log(2.0 * Math.PI * y));
        for (int step = 0; step < 50; step++)
        {
            double correction = (Of(x) - y) / Slope(x);
            x -= correction;
            if (Math.Abs(correction) <= 1e-15 * x)
            {
                break;
            }
        }

        return x;
    }

    // The power series of I0 without its first term, [AbramowitzStegun1964] eq. 9.6.12; ten terms are exact to rounding below x = 1.
    private static double ExcessOverOne(double x)
    {
        double quarter = 0.25 * x * x;
        double tail = 1.0;
        for (int k = 10; k >= 2; k--)
        {
            tail = 1.0 + (tail * quarter / (k * k));
        }

        return quarter * tail;
    }
}
