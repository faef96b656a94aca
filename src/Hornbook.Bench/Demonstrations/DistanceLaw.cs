using MathNet.Numerics;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The law P = C/(r + r₀)ⁿ that runs closest, in decibels, to powers over distances.</summary>
/// <param name="Exponent">n [-].</param>
/// <param name="Origin">r₀ [m].</param>
/// <param name="ResidualDb">Rms departure of the powers from the law [dB].</param>
/// <remarks>For a given r₀, ln P is a straight line in ln(r + r₀); r₀ is then sought where the rest is least.</remarks>
public sealed record DistanceLaw(double Exponent, double Origin, double ResidualDb)
{
    /// <summary>Share of the nearest distance up to which the origin may lie in front of the mouth.</summary>
    private const double Foremost = -0.9;

    /// <summary>Multiples of the farthest distance up to which the origin may lie behind the mouth.</summary>
    private const double Rearmost = 2.0;

    /// <summary>Origins tried before the least is narrowed down.</summary>
    private const int Candidates = 64;

    private static readonly double DecibelsPerNeper = 10.0 / Math.Log(10.0);

    /// <summary>The law with its exponent and its origin free.</summary>
    /// <param name="distances">r [m], length n ≥ 3, different, &gt; 0.</param>
    /// <param name="powers">P in any unit, length n, ≥ 0; 0 is taken for the smallest number.</param>
    public static DistanceLaw Fit(double[] distances, double[] powers) =>
        From(distances, powers, OriginOfLeast(distances, origin => From(distances, powers, origin).ResidualDb));

    /// <summary>The law with its exponent free and the origin in the mouths, r₀ = 0.</summary>
    /// <inheritdoc cref="Fit"/>
    public static DistanceLaw FromMouths(double[] distances, double[] powers) => From(distances, powers, 0.0);

    /// <summary>The law with n = 2 imposed and its origin free.</summary>
    /// <inheritdoc cref="Fit"/>
    public static DistanceLaw InverseSquare(double[] distances, double[] powers)
    {
        double origin = OriginOfLeast(distances, r0 => SpreadDb(distances, powers, r0, 2.0));
        return new DistanceLaw(2.0, origin, SpreadDb(distances, powers, origin, 2.0));
    }

    private static DistanceLaw From(double[] distances, double[] powers, double origin)
    {
        double[] logDistance = [.. distances.Select(r => Math.Log(r + origin))];
        double[] logPower = [.. powers.Select(LogOf)];
        (_, double slope) = MathNet.Numerics.Fit.Line(logDistance, logPower);
        return new DistanceLaw(-slope, origin, SpreadDb(distances, powers, origin, -slope));
    }

    private static double SpreadDb(double[] distances, double[] powers, double origin, double exponent)
    {
        double[] constants = [.. distances.Zip(powers, (r, p) => LogOf(p) + (exponent * Math.Log(r + origin)))];
        double mean = constants.Average();
        return DecibelsPerNeper * Math.Sqrt(constants.Average(c => (c - mean) * (c - mean)));
    }

    /// <summary>The origin of the least rest; an end of the range where the rest still falls there, which no table of powers of two mouths does.</summary>
    private static double OriginOfLeast(double[] distances, Func<double, double> residual)
    {
        double first = Foremost * distances.Min();
        double step = ((Rearmost * distances.Max()) - first) / Candidates;
        double best = Enumerable.Range(0, Candidates + 1).Select(i => first + (i * step)).MinBy(residual);
        bool isInside = residual(best) < Math.Min(residual(Math.Max(first, best - step)), residual(best + step));
        return isInside ? FindMinimum.OfScalarFunctionConstrained(residual, best - step, best + step, 1e-7) : best;
    }

    private static double LogOf(double power) => Math.Log(Math.Max(power, double.Epsilon));
}
