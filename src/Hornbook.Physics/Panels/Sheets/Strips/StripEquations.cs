using System.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>Galerkin's equations for the currents of a grid, with the waves that may travel left out, and what they say of the currents that these waves see.</summary>
/// <remarks>
/// The waves that may travel for some direction have the square roots and poles of grazing and of second beams; without them the answer is a smooth function of
/// the direction, and they are put back exactly. Eq. strip-grids (3), (4) and (5).
/// </remarks>
internal sealed class StripEquations
{
    // Waves left in must die out well for every direction: where one is just about to travel, the answer is not smooth.
    private const double Margin = 0.5;

    // Polynomials in 1/m carry from where m is this many times further out than the farthest branch point.
    private const double BranchMargin = 4.0;
    private const int FewestSingle = 6;

    // Waves whose amplitude has fallen by e^−20 there and back no longer feel the far face of the layer under the strips.
    private const double Faint = 20.0;

    // More waves than these do not fit a table; grids so coarse are read less exactly.
    private const int MostTravelling = 4;

    private readonly StripFunctions _functions;
    private readonly ISurroundings _surroundings;
    private readonly double _period;
    private readonly StripSums _sums;

    /// <summary>Equations for a grid at a frequency.</summary>
    /// <param name="functions">The transforms.</param>
    /// <param name="surroundings">What is on both sides.</param>
    /// <param name="period">p/λ [-].</param>
    internal StripEquations(StripFunctions functions, ISurroundings surroundings, double period)
    {
        (_functions, _surroundings, _period) = (functions, surroundings, period);
        double guided = surroundings.LargestGuided;
        Travelling = (int)Math.Min(Math.Floor(period * (1.0 + guided + Margin)), MostTravelling);
        double carried = Math.Max(BranchMargin * period * (1.0 + guided), 0.5 * Faint * period / surroundings.LayerPhase);
        _sums = functions.Sums(Travelling, Math.Max(Travelling + 1, FewestSingle + (int)Math.Ceiling(carried)));
    }

    /// <summary>The waves left out are those of the orders −n … n.</summary>
    internal int Travelling { get; }

    /// <summary>How many orders are left out, 2n + 1.</summary>
    internal int Waves => (2 * Travelling) + 1;

    /// <summary>The current that every wave left out sees for the field of every other, Y.</summary>
    /// <param name="across">k_u/k of order 0.</param>
    /// <param name="squaredAlong">(k_v/k)².</param>
    /// <returns>Y [-], size 2 × waves: currents across of all orders, then along. Currents along for fields across lack their factor k_v/k.</returns>
    internal Matrix<Complex> Admittance(double across, double squaredAlong)
    {
        int n = _functions.Count;
        Complex[,] equations = new Complex[2 * n, 2 * n];
        for (int i = 0; i < _sums.Orders.Length; i++)
        {
            Add(equations, i, across, squaredAlong);
        }

        Complete(equations, squaredAlong);
        Matrix<Complex> seen = Seen();
        Matrix<Complex> currents = Matrix<Complex>.Build.DenseOfArray(equations).Solve(seen);
        return seen.TransposeThisAndMultiply(currents);
    }

    /// <summary>Z of an order.</summary>
    /// <param name="order">m.</param>
    /// <param name="across">k_u/k of order 0.</param>
    /// <param name="along">k_v/k.</param>
    internal TangentialMatrix Impedance(int order, double across, double along)
    {
        Elements z = Of(across + (order / _period), along * along);
        return new TangentialMatrix(z.AcrossAcross, along * z.Mixed, along * z.Mixed, z.AlongAlong);
    }

    private void Add(Complex[,] equations, int index, double across, double squaredAlong)
    {
        int n = _functions.Count;
        double shift = _sums.Orders[index] / _period;
        Elements up = Of(across + shift, squaredAlong), down = Of(across - shift, squaredAlong);
        Elements even = up + down, odd = up - down;
        ReadOnlySpan<double> uu = _sums.AcrossAcross(index), uv = _sums.AcrossAlong(index), vv = _sums.AlongAlong(index);
        for (int i = 0, at = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++, at++)
            {
                Elements z = (i + j) % 2 == 0 ? even : odd;
                equations[i, j] += z.AcrossAcross * uu[at];
                equations[n + i, n + j] += z.AlongAlong * vv[at];
                equations[n + j, i] += z.Mixed * uv[at];
            }
        }
    }

    // With the currents along counted in units of k_v/k, only one of the mixed blocks keeps that factor, squared.
    private void Complete(Complex[,] equations, double squaredAlong)
    {
        int n = _functions.Count;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                equations[i, n + j] = squaredAlong * equations[n + j, i];
            }
        }
    }

    private Elements Of(double across, double squaredAlong)
    {
        SpectralImpedance z = _surroundings.Of(across, squaredAlong);
        return new Elements(z.Te + (across * across * z.Charge), across * z.Charge, z.Te + (squaredAlong * z.Charge));
    }

    // What the waves left out see of each function.
    private Matrix<Complex> Seen()
    {
        int n = _functions.Count;
        Matrix<Complex> seen = Matrix<Complex>.Build.Dense(2 * n, 2 * Waves);
        for (int order = -Travelling; order <= Travelling; order++)
        {
            ReadOnlySpan<double> across = _functions.Across(Math.Abs(order)), along = _functions.Along(Math.Abs(order));
            for (int i = 0; i < n; i++)
            {
                double sign = order < 0 && i % 2 != 0 ? -1.0 : 1.0;
                seen[i, order + Travelling] = sign * across[i];
                seen[n + i, Waves + order + Travelling] = sign * along[i];
            }
        }

        return seen;
    }

    private readonly record struct Elements(Complex AcrossAcross, Complex Mixed, Complex AlongAlong)
    {
        public static Elements operator +(Elements a, Elements b) =>
            new(a.AcrossAcross + b.AcrossAcross, a.Mixed + b.Mixed, a.AlongAlong + b.AlongAlong);

        public static Elements operator -(Elements a, Elements b) =>
            new(a.AcrossAcross - b.AcrossAcross, a.Mixed - b.Mixed, a.AlongAlong - b.AlongAlong);
    }
}
