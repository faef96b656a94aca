using CsCheck;
using Hornbook.Physics.Panels.Sheets.Wires;
using Hornbook.Testing;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Sheets.Wires;

public sealed class RowSumsTests
{
    private const int Highest = 8;

    private static readonly Gen<(double Period, double Across, double SquaredAlong)> Rows = Gen.Select(
        Gen.Double[0.2, 0.8], Gen.Double[0.0, 0.8], Gen.Double[0.0, 0.5]).Where(row => SourceBySource.IsClearOfOnset(row.Item1, row.Item2, row.Item3));

    [Fact]
    public void With_the_waves_left_out_put_back_they_are_the_sums_over_the_wires() => Gen.Select(Rows, Gen.Int[0, 2]).Sample(
        (row, travelling) =>
        {
            double transverse = Math.Sqrt(1.0 - row.SquaredAlong), wavenumber = row.Period * transverse;
            int leftOut = Math.Max(travelling, (int)(2.5 * row.Period));
            RowSums sums = new(wavenumber, row.Period * row.Across, leftOut, Highest);
            Complex[] plain = SourceBySource.Sums(Highest, row.Period, row.Across, transverse);
            for (int q = 0; q <= Highest; q++)
            {
                Complex waves = Enumerable.Range(-leftOut, (2 * leftOut) + 1).Aggregate(
                    Complex.Zero, (sum, m) => sum + PutBack(q, m, (row.Period * row.Across) + m, wavenumber));
                Complex sum = (new Complex(0.0, -sums[q]) + waves) / Math.PI;
                Complex expected = plain[q] * Complex.Pow(-Complex.ImaginaryOne, q) * Math.Pow(wavenumber, q);
                // Independent method: wire by wire; the wire in the middle takes one from the first.
                Close.Absolute(0.0, (sum - (q == 0 ? 1.0 : 0.0) - expected).Magnitude / Math.Max(expected.Magnitude, 1.0), 1e-6);
            }
        },
        iter: 5);

    [Theory]
    // Abramowitz and Stegun 1964, table 23.1: B_2(x) = x² − x + 1/6, B_4(0) = −1/30, B_12(0) = −691/2730.
    [InlineData(2, 0.3, 0.09 - 0.3 + (1.0 / 6.0))]
    [InlineData(4, 0.0, -1.0 / 30.0)]
    [InlineData(12, 0.0, -691.0 / 2730.0)]
    public void Bernoulli_polynomials_are_those_of_the_tables(int n, double x, double expected) =>
        Close.Relative(expected, BernoulliPolynomials.At(n, x), 1e-12);

    [Fact]
    public void Bernoulli_polynomials_sum_powers() => Gen.Select(Gen.Int[1, 16], Gen.Double[0.0, 3.0]).Sample((n, x) =>
        // Abramowitz and Stegun 1964, 23.1.6: B_n(x + 1) − B_n(x) = n xⁿ⁻¹.
        Close.Absolute(0.0, (BernoulliPolynomials.At(n, x + 1.0) - BernoulliPolynomials.At(n, x) - (n * Math.Pow(x, n - 1))) / Math.Pow(x + 2.0, n), 1e-9));

    // Chebyshev's polynomial times the wave, less the quiet one that stood for it.
    private static Complex PutBack(int q, int m, double b, double wavenumber)
    {
        Complex normal = Complex.Sqrt((wavenumber * wavenumber) - (b * b));
        normal = normal.Imaginary > 0.0 ? -normal : normal;
        (double polynomial, double next) = (1.0, b);
        for (int n = 0; n < q; n++)
        {
            (polynomial, next) = (next, (2.0 * b * next) - (wavenumber * wavenumber * polynomial));
        }

        Complex quiet = m == 0 ? Complex.Zero : Complex.ImaginaryOne / RowSums.Quiet(b);
        return polynomial * ((1.0 / normal) - quiet);
    }
}
