using CsCheck;
using Hornbook.Physics.Panels.Sheets.Wires;
using Hornbook.Testing;
using MathNet.Numerics;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Tests.Panels.Sheets.Wires;

public sealed class LatticeSumsTests
{
    private const int Sources = 1500;

    private static readonly Gen<(double Period, double Across, double SquaredAlong)> Rows =
        Gen.Select(Gen.Double[0.2, 0.8], Gen.Double[0.0, 0.8], Gen.Double[0.0, 0.5]).Where(row => IsClearOfOnset(row.Item1, row.Item2, row.Item3));

    [Fact]
    public void They_are_the_sums_over_the_sources() => Rows.Sample(
        row =>
        {
            double transverse = Math.Sqrt(1.0 - row.SquaredAlong);
            Complex[] sums = new Complex[LatticeSums.Highest + 1];
            LatticeSums.Fill(row.Period, row.Across, transverse, sums);
            for (int n = 0; n < sums.Length; n++)
            {
                Complex plain = Plain(n, 2.0 * Math.PI * row.Period * transverse, 2.0 * Math.PI * row.Period * row.Across);
                // Independent method: source by source, the last four fifths faded out so that their beats cancel.
                Close.Absolute(0.0, (sums[n] - plain).Magnitude / Math.Max(plain.Magnitude, 1.0), 1e-6);
            }
        },
        iter: 5);

    private static Complex Plain(int n, double spacing, double turn)
    {
        Complex sum = Complex.Zero;
        for (int s = 1; s < Sources; s++)
        {
            Complex hankel = new(SpecialFunctions.BesselJ(n, spacing * s), -SpecialFunctions.BesselY(n, spacing * s));
            Complex both = Complex.FromPolarCoordinates(1.0, turn * s) + ((n % 2 == 0 ? 1.0 : -1.0) * Complex.FromPolarCoordinates(1.0, -turn * s));
            sum += Faded((double)s / Sources) * hankel * both;
        }

        return sum;
    }

    // From 1 to 0 with all derivatives.
    private static double Faded(double place)
    {
        double x = (place - 0.2) / 0.8;
        return x <= 0.0 ? 1.0 : 1.0 / (1.0 + Math.Exp((1.0 / (1.0 - x)) - (1.0 / x)));
    }

    // The beats are slow where a wave of the row is about to graze.
    private static bool IsClearOfOnset(double period, double across, double squaredAlong)
    {
        double transverse = Math.Sqrt(1.0 - squaredAlong);
        return Enumerable.Range(-2, 5).All(m => Math.Abs(Math.Abs(across + (m / period)) - transverse) * period > 0.05);
    }
}
