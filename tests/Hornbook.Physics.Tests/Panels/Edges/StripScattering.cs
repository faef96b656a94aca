using System.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Tests.Panels.Edges;

/// <summary>The current on an endless metal strip in a plane wave at right angles to it, by the method of moments: an independent way to what two rims do together.</summary>
/// <remarks>
/// Electric field integral equation with cells that grow finer as the rims are neared, x = −(w/2) cos θ (Harrington, Field Computation by Moment Methods, 1968,
/// chapter 3, from memory): pulses tested at points for E along the strip, tents tested with tents for E across it. Lengths in wavelengths, E = 1 V/m.
/// </remarks>
internal static class StripScattering
{
    private const double K = 2.0 * Math.PI;
    private static readonly GaussLegendreRule Inner = new(0.0, 1.0, 8);
    private static readonly GaussLegendreRule Outer = new(0.0, 1.0, 6);

    /// <summary>∫ J e^{jkx sin a} dx in the direction a from the axis [A].</summary>
    public static Complex[] Far(double width, bool alongStrip, double[] angles)
    {
        double[] ends = [.. Enumerable.Range(0, (int)(40 * width) + 41).Select(i => -0.5 * width * Math.Cos(Math.PI * i / ((40 * width) + 40)))];
        (double[] x, Complex[] moments) = alongStrip ? Pulses(ends) : Tents(ends);
        return Array.ConvertAll(angles, a => x.Zip(moments, (p, j) => j * Complex.FromPolarCoordinates(1.0, K * p * Math.Sin(a))).Aggregate((s, t) => s + t));
    }

    private static (double[] X, Complex[] Moments) Pulses(double[] ends)
    {
        int n = ends.Length - 1;
        double[] x = [.. Enumerable.Range(0, n).Select(i => 0.5 * (ends[i] + ends[i + 1]))];
        Matrix<Complex> z = Matrix<Complex>.Build.Dense(n, n, (m, i) => 0.25 * K * Constants.VacuumImpedance * Potential(x[m], ends[i], ends[i + 1]).Whole);
        Complex[] density = [.. z.Solve(MathNet.Numerics.LinearAlgebra.Vector<Complex>.Build.Dense(n, 1.0))];
        return (x, [.. density.Select((j, i) => j * (ends[i + 1] - ends[i]))]);
    }

    private static (double[] X, Complex[] Moments) Tents(double[] ends)
    {
        int n = ends.Length - 2;
        Matrix<Complex> z = Matrix<Complex>.Build.Dense(n, n);
        for (int s = 0; s <= n; s++)
        {
            for (int o = 0; o < 6; o++)
            {
                for (int r = 0; r <= n; r++)
                {
                    AddPair(z, ends, s, r, Outer.GetAbscissa(o), Outer.GetWeight(o));
                }
            }
        }

        double[] halves = [.. Enumerable.Range(0, n).Select(i => 0.5 * (ends[i + 2] - ends[i]))];
        Complex[] density = [.. z.Solve(MathNet.Numerics.LinearAlgebra.Vector<Complex>.Build.Dense(n, i => halves[i]))];
        return (ends[1..^1], [.. density.Zip(halves, (j, h) => j * h)]);
    }

    // Halves of tents on two cells: k² f g − f′ g′ times the potential.
    private static void AddPair(Matrix<Complex> z, double[] ends, int s, int r, double t, double weight)
    {
        double ls = ends[s + 1] - ends[s], lr = ends[r + 1] - ends[r];
        (Complex whole, Complex rising) = Potential(ends[s] + (ls * t), ends[r], ends[r + 1]);
        foreach ((int row, double f, double slope) in new[] { (s - 1, 1.0 - t, -1.0 / ls), (s, t, 1.0 / ls) })
        {
            foreach ((int column, Complex g, double other) in new[] { (r - 1, whole - rising, -1.0 / lr), (r, rising, 1.0 / lr) })
            {
                if (row >= 0 && row < z.RowCount && column >= 0 && column < z.RowCount)
                {
                    z[row, column] += weight * ls * 0.25 * K * Constants.VacuumImpedance * ((f * g) - (slope * other * whole / (K * K)));
                }
            }
        }
    }

    // ∫ H0⁽²⁾(k|x−x'|) dx' over a cell, and the same with a weight that rises from 0 to 1; cubed steps from the nearest point meet the logarithm.
    private static (Complex Whole, Complex Rising) Potential(double x, double from, double to)
    {
        double nearest = Math.Clamp(x, from, to);
        (Complex whole, Complex rising) = (0.0, 0.0);
        foreach (double end in new[] { from, to })
        {
            for (int i = 0; i < 8 && end != nearest; i++)
            {
                double t = Inner.GetAbscissa(i), p = nearest + ((end - nearest) * t * t * t), d = K * Math.Abs(x - p);
                Complex value = new Complex(SpecialFunctions.BesselJ(0, d), -SpecialFunctions.BesselY(0, d)) * (Inner.GetWeight(i) * 3.0 * t * t * Math.Abs(end - nearest));
                whole += value;
                rising += value * ((p - from) / (to - from));
            }
        }

        return (whole, rising);
    }
}
