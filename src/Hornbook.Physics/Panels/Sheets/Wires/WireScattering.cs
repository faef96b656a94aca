using Hornbook.Physics.Panels.Sheets.Strips;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>What a row of round wires does to the field along them, E_v or H_v, each by itself: perfect conductors do not mix them, whatever the direction.</summary>
/// <param name="Reflected">R of that field.</param>
/// <param name="Passed">T of that field.</param>
/// <remarks>Eq. wire-grids (1) to (3): cylinder waves of the orders −3 … 3 about each wire, which meet those of all others.</remarks>
internal readonly record struct WireScattering(Complex Reflected, Complex Passed)
{
    private const int Highest = LatticeSums.Highest / 2;
    private const int Waves = (2 * Highest) + 1;

    /// <summary>Solves for both fields.</summary>
    /// <param name="period">p/λ.</param>
    /// <param name="radius">a/λ.</param>
    /// <param name="across">k_u/k.</param>
    /// <param name="squaredAlong">(k_v/k)², &lt; 1.</param>
    internal static (WireScattering Electric, WireScattering Magnetic) Of(double period, double radius, double across, double squaredAlong)
    {
        double transverse = Math.Sqrt(1.0 - squaredAlong);
        Span<Complex> sums = stackalloc Complex[LatticeSums.Highest + 1];
        LatticeSums.Fill(period, across, transverse, sums);
        double argument = 2.0 * Math.PI * radius * transverse;
        Span<Complex> electric = stackalloc Complex[Highest + 1];
        Span<Complex> magnetic = stackalloc Complex[Highest + 1];
        FillWire(argument, electric, magnetic);
        Complex normal = SheetNormal.Of((across * across) + squaredAlong);
        Complex turn = (across + (Complex.ImaginaryOne * normal)) / transverse;
        Complex density = 1.0 / (Math.PI * period * normal);
        return (Solve(electric, sums, turn, density), Solve(magnetic, sums, turn, density));
    }

    // What a wire answers to each cylinder wave: −J/H for a field that is zero on it, −J'/H' for one whose slope is.
    private static void FillWire(double argument, Span<Complex> electric, Span<Complex> magnetic)
    {
        Span<Complex> hankel = stackalloc Complex[Highest + 2];
        for (int n = 0; n < hankel.Length; n++)
        {
            hankel[n] = new Complex(SpecialFunctions.BesselJ(n, argument), -SpecialFunctions.BesselY(n, argument));
        }

        for (int n = 0; n <= Highest; n++)
        {
            Complex slope = n == 0 ? -hankel[1] : 0.5 * (hankel[n - 1] - hankel[n + 1]);
            electric[n] = -hankel[n].Real / hankel[n];
            magnetic[n] = -slope.Real / slope;
        }
    }

    // b_l = D_l (i_l + Σ S_{n−l} b_n), with each wave scaled by √D so that all are of one size.
    private static WireScattering Solve(ReadOnlySpan<Complex> wire, ReadOnlySpan<Complex> sums, Complex turn, Complex density)
    {
        Matrix<Complex> equations = Matrix<Complex>.Build.DenseIdentity(Waves);
        Vector<Complex> incident = Vector<Complex>.Build.Dense(Waves);
        for (int row = 0; row < Waves; row++)
        {
            int l = row - Highest;
            Complex own = Complex.Sqrt(wire[Math.Abs(l)]);
            incident[row] = own * Complex.Pow(Complex.ImaginaryOne * turn, -l);
            for (int column = 0; column < Waves; column++)
            {
                int n = column - Highest, apart = n - l;
                Complex sum = apart < 0 && apart % 2 != 0 ? -sums[-apart] : sums[Math.Abs(apart)];
                equations[row, column] -= own * sum * Complex.Sqrt(wire[Math.Abs(n)]);
            }
        }

        Vector<Complex> waves = equations.Solve(incident);
        Complex reflected = Complex.Zero, passed = Complex.One;
        for (int column = 0; column < Waves; column++)
        {
            int n = column - Highest;
            Complex sent = density * waves[column] * Complex.Sqrt(wire[Math.Abs(n)]);
            reflected += sent * Complex.Pow(Complex.ImaginaryOne / turn, n);
            passed += sent * Complex.Pow(Complex.ImaginaryOne * turn, n);
        }

        return new WireScattering(reflected, passed);
    }
}
