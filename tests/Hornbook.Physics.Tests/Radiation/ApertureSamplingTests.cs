using System.Numerics;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using MathNet.Numerics;
using MathNet.Numerics.Integration;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>How fast the field of a sampled mouth converges, in front of it and off its axis: Eq. radiation (10).</summary>
public sealed class ApertureSamplingTests
{
    private const double K = 220.0, Width = 0.09, Height = 0.07;

    private static readonly Vector[] Observers = [new(0.3, 0.0, 0.0), new(0.25, 0.1, -0.06)];

    // 64 points: an order that the library has a table of, so that its nodes are right to the last digits.
    private static readonly FieldSample[] Exact = Fields(Gauss(Width, 64), Gauss(Height, 64));

    [Fact]
    public void The_midpoint_rule_is_of_second_order()
    {
        double[] counts = [24, 32, 48, 64, 96];
        double[] errors = [.. counts.Select(n => Error(Fields(Midpoint(Width, (int)n), Midpoint(Height, (int)n))))];
        (_, double slope) = Fit.Line([.. counts.Select(n => Math.Log(n))], [.. errors.Select(e => Math.Log(e))]);
        Close.Absolute(-2.0, slope, 0.1);
    }

    [Fact]
    public void Gauss_Legendre_gains_a_digit_for_each_point_more_until_rounding()
    {
        // Derived: the mouth is 3.2 wavelengths across, at most 1.6 of them path difference; from 8 points on it is past that.
        double[] counts = [8, 9, 10, 11, 12, 13];
        double[] errors = [.. counts.Select(n => Error(Fields(Gauss(Width, (int)n), Gauss(Height, (int)n))))];
        (_, double slope) = Fit.Line(counts, [.. errors.Select(e => Math.Log10(e))]);
        Assert.InRange(slope, -2.0, -1.0);
        Close.Absolute(0.0, Error(Fields(Gauss(Width, 20), Gauss(Height, 20))), 1e-13);
    }

    private static double Error(FieldSample[] fields) => fields.Zip(Exact, (f, exact) =>
        Math.Sqrt((f.Electric + (exact.Electric * -1.0)).SquaredMagnitude / exact.Electric.SquaredMagnitude)).Max();

    // The field of TE10 with a flare's phase: E along z, H along −y, J = x×H, M = −x×E.
    private static FieldSample[] Fields((double At, double Weight)[] across, (double At, double Weight)[] up)
    {
        (Vector Point, Complex Field)[] mouth = [.. across.SelectMany(y => up.Select(z => (
            new Vector(0.0, y.At, z.At),
            Complex.FromPolarCoordinates(y.Weight * z.Weight * Math.Cos(Math.PI * y.At / Width), -K * ((y.At * y.At) + (z.At * z.At)) / 0.4))))];
        CurrentSamples currents = new(
            Array.ConvertAll(mouth, m => m.Point),
            Array.ConvertAll(mouth, m => new ComplexVector(0, 0, -m.Field / Constants.VacuumImpedance)),
            Array.ConvertAll(mouth, m => new ComplexVector(0, m.Field, 0)));
        FieldSample[] fields = new FieldSample[Observers.Length];
        RadiatedField.Evaluate(currents, K, Observers, fields);
        return fields;
    }

    private static (double At, double Weight)[] Gauss(double side, int points)
    {
        GaussLegendreRule rule = new(-0.5 * side, 0.5 * side, points);
        return [.. Enumerable.Range(0, points).Select(i => (rule.Abscissas[i], rule.Weights[i]))];
    }

    private static (double At, double Weight)[] Midpoint(double side, int points) =>
        [.. Enumerable.Range(0, points).Select(i => (side * (((i + 0.5) / points) - 0.5), side / points))];
}
