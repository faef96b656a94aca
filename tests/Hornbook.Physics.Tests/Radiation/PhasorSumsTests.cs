using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>Against the same written out with the library's complex numbers.</summary>
public static class PhasorSumsTests
{
    private static readonly Gen<Complex> Number = Gen.Select(Gen.Double[-1.0, 1.0], Gen.Double[-1.0, 1.0], (re, im) => new Complex(re, im));
    private static readonly Gen<ComplexVector> Phasor = Gen.Select(Number, Number, Number, (x, y, z) => new ComplexVector(x, y, z));

    private static void AreAlike(ComplexVector expected, ComplexVector actual) =>
        Close.Absolute(0.0, Math.Sqrt((expected + (actual * -1.0)).SquaredMagnitude), 1e-14);

    [Fact]
    public static void Phasors_times_a_number_are_added_to_the_first_ones() =>
        Gen.Int[0, 9].SelectMany(count => Gen.Select(Phasor.Array[count], Phasor.Array[count + 2], Number)).Sample((added, before, factor) =>
        {
            ComplexVector[] sum = [.. before];
            PhasorSums.Add(sum, added, factor);
            Assert.All(sum, (after, i) => AreAlike(i < added.Length ? before[i] + (added[i] * factor) : before[i], after));
        });

    [Fact]
    public static void The_inner_product_is_that_of_every_component_as_far_as_both_go() =>
        Gen.Select(Phasor.Array[0, 9], Phasor.Array[0, 9]).Sample((a, b) =>
        {
            Complex expected = a.Zip(b, (one, other) => (Complex.Conjugate(one.X) * other.X) + (Complex.Conjugate(one.Y) * other.Y) + (Complex.Conjugate(one.Z) * other.Z))
                .Aggregate(Complex.Zero, (sum, product) => sum + product);
            Close.Absolute(0.0, (expected - PhasorSums.Inner(a, b)).Magnitude, 1e-13);
        });
}
