using System.Numerics;
using Hornbook.Physics.Panels.Sheets;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Tests.Panels.Sheets.Strips;

/// <summary>The same equations for the currents of strips with their sums done order by order, thousands of times slower: what the fast ones are measured against.</summary>
internal sealed class PlainStripSums
{
    private const int Functions = 6;

    // The sums over the plane waves of the grid are cut where q is large against the orders, and the mean of what is left is added.
    private const double LargestArgument = 2000.0;

    private readonly double _share;
    private readonly int _orders;
    private readonly Complex[,] _across;
    private readonly Complex[,] _along;

    internal PlainStripSums(double share)
    {
        _share = share;
        _orders = (int)Math.Ceiling(LargestArgument / (Math.PI * share));
        _across = new Complex[_orders + 1, Functions];
        _along = new Complex[_orders + 1, Functions];
        for (int m = 0; m <= _orders; m++)
        {
            double q = Math.PI * m * share;
            for (int n = 0; n < Functions; n++)
            {
                Complex turn = Complex.Pow(Complex.ImaginaryOne, n);
                _along[m, n] = Math.PI * turn * Bessel(n, q);
                _across[m, n] = Math.PI * turn * (m == 0 ? (n == 0 ? 0.5 : 0.0) : (n + 1) * Bessel(n + 1, q) / q);
            }
        }
    }

    /// <summary>R of the tangential electric field in the direction of reflection.</summary>
    /// <param name="period">p/λ.</param>
    /// <param name="wave">Direction cosines across and along the strips.</param>
    internal TangentialMatrix Reflection(double period, (double Across, double Along) wave)
    {
        Matrix<Complex> equations = Equations(period, wave);
        Matrix<Complex> incident = Matrix<Complex>.Build.Dense(2 * Functions, 2);
        incident[0, 0] = _across[0, 0];
        incident[Functions, 1] = _along[0, 0];
        Matrix<Complex> currents = equations.Solve(incident);
        double density = 0.5 * _share;
        TangentialMatrix radiated = new(
            density * _across[0, 0] * currents[0, 0], density * _across[0, 0] * currents[0, 1],
            density * _along[0, 0] * currents[Functions, 0], density * _along[0, 0] * currents[Functions, 1]);
        return Impedance(wave, 0.0) * radiated * -0.5;
    }

    // A_ij = Σ_m ½ Z(m) (w/2p) F_i(q)* F_j(q), currents times the impedance of vacuum as unknowns.
    private Matrix<Complex> Equations(double period, (double Across, double Along) wave)
    {
        Complex[,] sums = new Complex[2 * Functions, 2 * Functions];
        for (int m = -_orders; m <= _orders; m++)
        {
            TangentialMatrix z = Impedance(wave, m / period) * (0.25 * _share);
            Add(sums, z, m);
        }

        AddTail(sums, period, wave);
        return Matrix<Complex>.Build.DenseOfArray(sums);
    }

    private void Add(Complex[,] sums, TangentialMatrix z, int m)
    {
        for (int i = 0; i < Functions; i++)
        {
            Complex ui = Complex.Conjugate(At(_across, m, i)), vi = Complex.Conjugate(At(_along, m, i));
            for (int j = 0; j < Functions; j++)
            {
                Complex uj = At(_across, m, j), vj = At(_along, m, j);
                sums[i, j] += z.AcrossAcross * ui * uj;
                sums[i, Functions + j] += z.AcrossAlong * ui * vj;
                sums[Functions + i, j] += z.AlongAcross * vi * uj;
                sums[Functions + i, Functions + j] += z.AlongAlong * vi * vj;
            }
        }
    }

    // F(−q) = F(q)*, since the functions are real.
    private static Complex At(Complex[,] table, int m, int n) => m >= 0 ? table[m, n] : Complex.Conjugate(table[-m, n]);

    // Beyond the last order kz → −j|k_u|, the products of Bessel functions average to 1/πq, and Σ 1/m² → 1/(M + ½). Eq. strip-grids (5).
    private void AddTail(Complex[,] sums, double period, (double Across, double Along) wave)
    {
        double width = _share * period;
        double rest = 1.0 / (_orders + 0.5);
        Complex along = new(0.0, (1.0 - (wave.Along * wave.Along)) * period * 0.5 * rest);
        Complex across = new(0.0, -period / (2.0 * Math.PI * Math.PI * width * width) * rest);
        double mixed = wave.Along * period / (2.0 * Math.PI * width) * rest;
        for (int i = 0; i < Functions; i++)
        {
            for (int j = 0; j < Functions; j++)
            {
                bool sameParity = (i + j) % 2 == 0;
                sums[i, j] += sameParity ? across * ((i + 1) * (j + 1)) : Complex.Zero;
                sums[Functions + i, Functions + j] += sameParity ? along : Complex.Zero;
                sums[i, Functions + j] += sameParity ? Complex.Zero : mixed * (i + 1);
                sums[Functions + i, j] -= sameParity ? Complex.Zero : mixed * (j + 1);
            }
        }
    }

    // Z of the wave whose wave vector across the strips is shifted; the root that dies out.
    private static TangentialMatrix Impedance((double Across, double Along) wave, double shift)
    {
        double u = wave.Across + shift, v = wave.Along;
        double squared = 1.0 - (u * u) - (v * v);
        Complex normal = squared >= 0.0 ? Math.Sqrt(squared) : new Complex(0.0, -Math.Sqrt(-squared));
        return new TangentialMatrix((1.0 - (u * u)) / normal, -u * v / normal, -u * v / normal, (1.0 - (v * v)) / normal);
    }

    private static double Bessel(int order, double x) => SpecialFunctions.BesselJ(order, x);
}
