using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class DistanceLawTests
{
    private static readonly double[] Distances = [.. Enumerable.Range(0, 30).Select(i => 0.4 + (0.04 * i))];

    [Fact]
    public void Finds_the_exponent_and_the_origin_that_made_the_powers() =>
        Gen.Select(Gen.Double[1.0, 4.0], Gen.Double[-0.2, 0.5], Gen.Double[1e-9, 1.0]).Sample((exponent, origin, strength) =>
        {
            // The origin is sought to 1e-7 of the range, which leaves a few 1e-6 in both.
            DistanceLaw law = DistanceLaw.Fit(Distances, Powers(exponent, origin, strength));
            Close.Absolute(exponent, law.Exponent, 1e-4);
            Close.Absolute(origin, law.Origin, 1e-4);
            Close.Absolute(0.0, law.ResidualDb, 1e-4);
        });

    [Fact]
    public void Finds_the_origin_for_which_the_inverse_square_holds()
    {
        DistanceLaw law = DistanceLaw.InverseSquare(Distances, Powers(2.0, 0.12, 1.0));
        Close.Absolute(0.12, law.Origin, 1e-6);
        Assert.Equal(2.0, law.Exponent);
    }

    [Fact]
    public void Taken_from_the_mouths_a_hidden_origin_makes_the_exponent_too_small()
    {
        // d ln P/d ln r = −n r/(r + r₀), derived: between 2 × 0.4/0.5 and 2 × 1.56/1.66 for r₀ = 0.1 m.
        DistanceLaw law = DistanceLaw.FromMouths(Distances, Powers(2.0, 0.1, 1.0));
        Assert.InRange(law.Exponent, 1.6, 1.88);
        Assert.Equal(0.0, law.Origin);
    }

    private static double[] Powers(double exponent, double origin, double strength) =>
        [.. Distances.Select(r => strength / Math.Pow(r + origin, exponent))];
}
