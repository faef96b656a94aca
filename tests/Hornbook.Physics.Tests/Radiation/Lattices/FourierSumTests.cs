using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;
using Hornbook.Testing;
using MathNet.Numerics.IntegralTransforms;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Lattices;

/// <summary>Against the transform of a general-purpose library, Math.NET Numerics.</summary>
public static class FourierSumTests
{
    private static readonly Gen<Complex> Number = Gen.Select(Gen.Double[-1.0, 1.0], Gen.Double[-1.0, 1.0], (re, im) => new Complex(re, im));

    // The first of the six phasors; the others are what they are for every row.
    private static Complex[] Sum<T>(FourierSum sum, Complex[] rows, int results)
        where T : unmanaged, ILanes<T>
    {
        int width = Channels<T>.Width;
        double[] channels = new double[rows.Length * width], sums = new double[results * width];
        for (int i = 0; i < rows.Length; i++)
        {
            Channels<T>.Write(new ComplexVector(rows[i], 1.0, 0.0), default, channels.AsSpan(i * width));
        }

        sum.Fill<T>(channels, width, sums);
        return [.. Enumerable.Range(0, results).Select(i => Channels<T>.Read(sums.AsSpan(i * width)).A.X)];
    }

    private static void AreAlike(Complex[] expected, Complex[] actual) =>
        Assert.All(expected.Zip(actual), pair => Close.Absolute(0.0, (pair.First - pair.Second).Magnitude, 1e-12 * expected.Length));

    private static Complex[] Padded(Complex[] values, int count) => [.. values, .. new Complex[count - values.Length]];

    [Fact]
    public static void Waves_are_those_of_a_transform_of_the_places_and_empty_ones_behind_them() =>
        Gen.Int[2, 40].SelectMany(waves => Gen.Int[1, waves].SelectMany(places => Number.Array[places]).Select(values => (waves, values))).Sample(
            c =>
            {
                Complex[] expected = Padded(c.values, c.waves);
                Fourier.Forward(expected, FourierOptions.AsymmetricScaling);
                FourierSum sum = FourierSum.ToWaves(c.values.Length, c.waves);
                AreAlike(expected, Sum<Lanes128>(sum, c.values, c.waves));
                AreAlike(expected, Sum<Lanes256>(sum, c.values, c.waves));
                AreAlike(expected, Sum<Lanes512>(sum, c.values, c.waves));
            },
            iter: 100);

    [Fact]
    public static void Places_are_the_first_ones_of_the_transform_back() =>
        Gen.Int[2, 40].SelectMany(waves => Gen.Select(Gen.Int[1, waves], Number.Array[waves])).Sample(
            (places, values) =>
            {
                Complex[] expected = [.. values];
                Fourier.Inverse(expected, FourierOptions.NoScaling);
                AreAlike(expected[..places], Sum<Lanes512>(FourierSum.ToPlaces(values.Length, places), values, places));
            },
            iter: 100);
}
