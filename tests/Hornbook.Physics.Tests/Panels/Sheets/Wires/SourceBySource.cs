using MathNet.Numerics;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Sheets.Wires;

/// <summary>The sums over the wires of a row as they are written: S_n = Σ_{s≥1} H_n(Kps) [e^{jβps} + (−1)ⁿ e^{−jβps}], Hankel functions of the second kind.</summary>
internal static class SourceBySource
{
    private const int Sources = 1500;

    /// <summary>S_0 … S_highest; the last four fifths of the sources are faded out so that their beats cancel.</summary>
    internal static Complex[] Sums(int highest, double period, double across, double transverse)
    {
        Complex[] sums = new Complex[highest + 1];
        for (int s = 1; s < Sources; s++)
        {
            double spacing = 2.0 * Math.PI * period * transverse * s, fade = Faded((double)s / Sources);
            Complex turn = Complex.FromPolarCoordinates(1.0, 2.0 * Math.PI * period * across * s);
            for (int n = 0; n <= highest; n++)
            {
                Complex hankel = new(SpecialFunctions.BesselJ(n, spacing), -SpecialFunctions.BesselY(n, spacing));
                sums[n] += fade * hankel * (turn + ((n % 2 == 0 ? 1.0 : -1.0) / turn));
            }
        }

        return sums;
    }

    /// <summary>The beats are slow where a wave of the row is about to graze.</summary>
    internal static bool IsClearOfOnset(double period, double across, double squaredAlong)
    {
        double transverse = Math.Sqrt(1.0 - squaredAlong);
        return Enumerable.Range(-2, 5).All(m => Math.Abs(Math.Abs(across + (m / period)) - transverse) * period > 0.05);
    }

    // From 1 to 0 with all derivatives.
    private static double Faded(double place)
    {
        double x = (place - 0.2) / 0.8;
        return x <= 0.0 ? 1.0 : 1.0 / (1.0 + Math.Exp((1.0 / (1.0 - x)) - (1.0 / x)));
    }
}
