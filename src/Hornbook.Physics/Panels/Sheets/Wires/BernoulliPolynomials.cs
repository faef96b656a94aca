using MathNet.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>Bernoulli's polynomials, which sum powers of whole numbers. [AbramowitzStegun1964] § 23.1.</summary>
internal static class BernoulliPolynomials
{
    private const int Highest = 32;

    private static readonly double[] Numbers = Make();

    /// <summary>B_n(x).</summary>
    /// <param name="n">0 to 32.</param>
    /// <param name="x">x.</param>
    internal static double At(int n, double x)
    {
        double sum = 0.0;
        for (int k = 0; k <= n; k++)
        {
            sum = (sum * x) + (SpecialFunctions.Binomial(n, k) * Numbers[k]);
        }

        return sum;
    }

    // Σ_{k<n} C(n, k) B_k = 0 for n ≥ 2.
    private static double[] Make()
    {
        double[] numbers = new double[Highest + 1];
        numbers[0] = 1.0;
        for (int n = 1; n <= Highest; n++)
        {
            double sum = 0.0;
            for (int k = 0; k < n; k++)
            {
                sum += SpecialFunctions.Binomial(n + 1, k) * numbers[k];
            }

            numbers[n] = n % 2 == 1 && n > 1 ? 0.0 : -sum / (n + 1);
        }

        return numbers;
    }
}
