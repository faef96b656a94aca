namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>Chebyshev's polynomials of the second kind summed over all orders of a row, as what is finite of that.</summary>
/// <remarks>Power by power, Σ_{m≥0} (m+x)^s → −B_{s+1}(x)/(s+1). Eq. wire-grids (8).</remarks>
internal static class PolynomialSums
{
    /// <summary>Over orders 1, 2, … less those over −1, −2, …, with the sign changed, of κ^n U_n(b/κ), b = x + m.</summary>
    /// <param name="shift">x.</param>
    /// <param name="squared">κ².</param>
    /// <param name="count">n from 0 to one less than this.</param>
    internal static double[] Of(double shift, double squared, int count)
    {
        double[] powers = new double[count], sums = new double[count];
        for (int s = 0; s < count; s++)
        {
            powers[s] = (2.0 * BernoulliPolynomials.At(s + 1, shift) / (s + 1)) + Math.Pow(shift, s);
        }

        double[] before = new double[count + 1], polynomial = new double[count + 1];
        polynomial[0] = 1.0;
        for (int n = 0; n < count; n++)
        {
            for (int s = 0; s <= n; s++)
            {
                sums[n] += polynomial[s] * powers[s];
            }

            (before, polynomial) = (polynomial, Next(polynomial, before, squared));
        }

        return sums;
    }

    // U_{n+1} = 2b U_n − κ² U_{n−1}, by its coefficients.
    private static double[] Next(double[] polynomial, double[] before, double squared)
    {
        double[] next = new double[polynomial.Length];
        for (int s = 0; s < next.Length; s++)
        {
            next[s] = (s > 0 ? 2.0 * polynomial[s - 1] : 0.0) - (squared * before[s]);
        }

        return next;
    }
}
