namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>What the multipoles of all other wires of a row send to one of them, with the waves that may travel left out: real, smooth numbers.</summary>
/// <remarks>
/// A sum over the wires is turned into one over the waves of the row; what each term tends to is summed in closed form. Wave numbers are in units of 2π/p. Eq. wire-grids (6)
/// to (8), derived there; in other forms [Twersky1961], [Linton2010].
/// </remarks>
internal sealed class RowSums
{
    // What is left beyond falls with the fifth power: 1e-10.
    private const int Orders = 32;

    // Keeps the quiet waves away from where they would travel.
    private const double QuietOffset = 0.25;

    private readonly double _squared;
    private readonly int _travelling;
    private readonly double[] _sums;

    /// <summary>Makes the sums.</summary>
    /// <param name="wavenumber">κ, that of the waves across the wires; &gt; 0.</param>
    /// <param name="shift">k_u, ≥ 0.</param>
    /// <param name="travelling">The orders −n … n may travel: order 0 is left out, the others are replaced by quiet waves.</param>
    /// <param name="highest">The largest difference or sum of two multipoles' numbers.</param>
    internal RowSums(double wavenumber, double shift, int travelling, int highest)
    {
        (_squared, _travelling) = (wavenumber * wavenumber, travelling);
        _sums = [-2.0 * (MathNet.Numerics.Constants.EulerMascheroni + Math.Log(0.5 * wavenumber)), .. PolynomialSums.Of(shift, _squared, highest)];
        for (int q = 2; q <= highest; q += 2)
        {
            _sums[q] += (q % 4 == 0 ? 2.0 : -2.0) * Math.Pow(wavenumber, q) / q;
        }

        Span<double> terms = stackalloc double[highest + 1];
        Subtract(shift, 1.0, terms);
        Subtract(-shift, -1.0, terms);
    }

    /// <summary>Between multipoles whose numbers differ by q, times πκ^q.</summary>
    internal double this[int q] => _sums[q];

    /// <summary>What takes the place of −j k_z of an order other than 0 that may travel: it dies out in every direction.</summary>
    /// <param name="b">k_u of the order.</param>
    internal static double Quiet(double b) => Math.Sqrt((b * b) + QuietOffset);

    // Orders 1, 2, … on one side; the midpoint rule sums what is beyond.
    private void Subtract(double shift, double side, Span<double> terms)
    {
        for (int m = 1; m <= Orders; m++)
        {
            if (m <= _travelling)
            {
                FillQuiet(m + shift, terms);
            }
            else
            {
                Fill(m + shift, terms);
            }

            terms[0] -= 1.0 / m;
            Subtract(side, terms);
        }

        FillRest(Orders + 0.5, shift, terms);
        Subtract(side, terms);
    }

    private void Subtract(double side, ReadOnlySpan<double> terms)
    {
        double sign = 1.0;
        for (int q = 0; q < _sums.Length; q++)
        {
            _sums[q] -= sign * terms[q];
            sign *= side;
        }
    }

    // (κ e^{−t})^q/γ with b = κ cosh t, γ = κ sinh t.
    private void Fill(double b, Span<double> terms)
    {
        double gamma = Math.Sqrt((b * b) - _squared), ratio = _squared / (b + gamma), term = 1.0 / gamma;
        for (int q = 0; q < terms.Length; q++)
        {
            terms[q] = term;
            term *= ratio;
        }
    }

    private void FillRest(double end, double shift, Span<double> terms)
    {
        double last = end + shift, gamma = Math.Sqrt((last * last) - _squared);
        Fill(last, terms);
        for (int q = 0; q < terms.Length; q++)
        {
            double slope = -((q * gamma) + last) * terms[q] / (gamma * gamma);
            terms[q] = q == 0
                ? Math.Log(2.0 * end / (last + gamma)) + ((slope + (1.0 / (end * end))) / 24.0)
                : (terms[q] * gamma / q) + (slope / 24.0);
        }
    }

    // T_q/γ − U_{q−1} is the term; a quiet wave has another γ, and the polynomial is what the closed form counts for every order.
    private void FillQuiet(double b, Span<double> terms)
    {
        double quiet = Quiet(b);
        (double first, double nextFirst, double second, double nextSecond) = (1.0, b, 0.0, 1.0);
        for (int q = 0; q < terms.Length; q++)
        {
            terms[q] = (first / quiet) - second;
            (first, nextFirst) = (nextFirst, (2.0 * b * nextFirst) - (_squared * first));
            (second, nextSecond) = (nextSecond, (2.0 * b * nextSecond) - (_squared * second));
        }
    }
}
