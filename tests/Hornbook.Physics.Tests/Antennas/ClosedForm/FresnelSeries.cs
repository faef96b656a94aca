using System.Numerics;

namespace Hornbook.Physics.Tests.Antennas.ClosedForm;

/// <summary>The textbook form of the flare factors, by power series: an independent way to the same numbers.</summary>
internal static class FresnelSeries
{
    /// <summary>C(x) + jS(x) = ∫₀ˣ e^{jπt²/2} dt by its power series; good to 1e-10 for |x| &lt; 3.2.</summary>
    internal static Complex Integral(double x)
    {
        Complex term = x, sum = x;
        for (int n = 1; n < 200; n++)
        {
            term *= new Complex(0.0, 0.5 * Math.PI * x * x) / n;
            sum += term / ((2 * n) + 1);
        }

        return sum;
    }

    /// <summary>R_E = [C²(w) + S²(w)]/w², w = 2√s (Schelkunoff's form as in Balanis, Antenna Theory, ch. 13).</summary>
    internal static double FactorE(double s)
    {
        double w = 2.0 * Math.Sqrt(s);
        return Math.Pow(Integral(w).Magnitude / w, 2.0);
    }

    /// <summary>R_H = (π²/4) |Z(u) − Z(v)|²/(u − v)², u, v = (1/√(8t) ± √(8t))/√2 (same source).</summary>
    internal static double FactorH(double t)
    {
        double root = Math.Sqrt(8.0 * t);
        double u = ((1.0 / root) + root) / Math.Sqrt(2.0), v = ((1.0 / root) - root) / Math.Sqrt(2.0);
        return 0.25 * Math.PI * Math.PI * Math.Pow((Integral(u) - Integral(v)).Magnitude / (u - v), 2.0);
    }
}
