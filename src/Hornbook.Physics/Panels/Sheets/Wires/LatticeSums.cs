using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Strips;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>What a row of equal sources throws at the one in the middle, S_n = Σ_{s≥1} H_n(Kps) [e^{jβps} + (−1)ⁿ e^{−jβps}], Hankel functions of the second kind, from the waves of the row.</summary>
/// <remarks>Eq. wire-grids (4); [Twersky1961], [Linton2010], from memory; the tests compare them with the sums themselves.</remarks>
internal static class LatticeSums
{
    /// <summary>The highest n.</summary>
    internal const int Highest = 6;

    // The rest of the slowest sums falls as 1/m³ and its leading part is added: below 1e-8 is left for p < λ.
    private const int Orders = 100;

    /// <summary>Fills S_0 … S_6.</summary>
    /// <param name="period">p/λ.</param>
    /// <param name="across">β/k.</param>
    /// <param name="transverse">K/k = √(1 − (k_v/k)²), &gt; 0.</param>
    /// <param name="sums">Filled; seven.</param>
    internal static void Fill(double period, double across, double transverse, Span<Complex> sums)
    {
        sums.Clear();
        Add(0, period, across, transverse, sums);
        Span<Complex> pair = stackalloc Complex[Highest + 1];
        for (int m = 1; m <= Orders; m++)
        {
            pair.Clear();
            Add(m, period, across, transverse, pair);
            Add(-m, period, across, transverse, pair);
            pair[0] += new Complex(0.0, -2.0 / (Math.PI * m));
            for (int n = 0; n <= Highest; n++)
            {
                sums[n] += pair[n];
            }
        }

        double rest = Orders * (double)Orders * Orders / (2.0 * (Orders + 0.5) * (Orders + 0.5));
        for (int n = 0; n < 3; n++)
        {
            sums[n] += pair[n] * rest;
        }

        AddClosed(period * across, 1.0 / (period * transverse), sums);
    }

    // One wave of the row: 2/(p k_x) ((k_x ± jβ)/K)ⁿ; odd ones take the sign of the side to which the wave belongs.
    private static void Add(int m, double period, double across, double transverse, Span<Complex> sums)
    {
        double beta = across + (m / period), side = m < 0 ? -1.0 : 1.0;
        Complex normal = SheetNormal.Of(1.0 - (transverse * transverse) + (beta * beta));
        Complex turn = Turn(normal, side * beta, transverse);
        Complex power = 1.0 / (Math.PI * period * normal);
        for (int n = 0; n <= Highest; n++)
        {
            sums[n] += n % 2 == 0 ? power : side * power;
            power *= turn;
        }
    }

    // (k_x + jβ)/K; where the two nearly cancel, as K/(k_x − jβ).
    private static Complex Turn(Complex normal, double beta, double transverse)
    {
        Complex sum = normal + new Complex(0.0, beta), difference = normal - new Complex(0.0, beta);
        return sum.Magnitude >= difference.Magnitude ? sum / transverse : transverse / difference;
    }

    // b = βp/2π, r = 2π/Kp: what is left when the sums over all orders, of which the parts that grow cancel, are done.
    private static void AddClosed(double b, double r, Span<Complex> sums)
    {
        double b2 = b * b, r2 = r * r;
        double first = b - 0.5, second = b2 - b + (1.0 / 6.0), third = b * (b - 0.5) * (b - 1.0);
        double fourth = (b2 * (b - 1.0) * (b - 1.0)) - (1.0 / 30.0);
        double fifth = b * (b - 0.5) * (b - 1.0) * (b2 - b - (1.0 / 3.0));
        double sixth = (b2 * b2 * ((b2 - (3.0 * b)) + 2.5)) - (0.5 * b2) + (1.0 / 42.0);
        sums[0] += new Complex(-1.0, 2.0 / Math.PI * (MathNet.Numerics.Constants.EulerMascheroni - Math.Log(2.0 * r)));
        sums[1] += 2.0 / Math.PI * r * first;
        sums[2] += new Complex(0.0, (-1.0 + (2.0 * r2 * second)) / Math.PI);
        sums[3] += 2.0 / Math.PI * r * (first - (4.0 / 3.0 * r2 * third));
        sums[4] += new Complex(0.0, (-0.5 + (4.0 * r2 * second) - (4.0 * r2 * r2 * fourth)) / Math.PI);
        sums[5] += 2.0 / Math.PI * r * (first - (4.0 * r2 * third) + (16.0 / 5.0 * r2 * r2 * fifth));
        sums[6] += new Complex(0.0, (-(1.0 / 3.0) + (6.0 * r2 * second) - (16.0 * r2 * r2 * fourth) + (32.0 / 3.0 * r2 * r2 * r2 * sixth)) / Math.PI);
    }
}
