using System.Numerics;
using CsCheck;
using Hornbook.Physics.Radiation.Transfers;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

public sealed class SmoothnessTests
{
    /// <summary>Largest error of interpolation at the nodes of a rule, on a fine grid.</summary>
    private static double Error(ChebyshevRule rule, Func<double, Complex> function)
    {
        Complex[] coefficients = [.. Enumerable.Range(0, rule.Count).Select(i => Enumerable.Range(0, rule.Count)
            .Aggregate(Complex.Zero, (sum, a) => sum + (rule.ToPolynomials[(i * rule.Count) + a] * function(rule.Nodes[a]))))];
        return Enumerable.Range(0, 401).Select(s => (s - 200) / 200.0).Max(x => Complex.Abs(
            function(x) - coefficients.Select((c, i) => c * Math.Cos(i * Math.Acos(x))).Aggregate((a, b) => a + b)));
    }

    [Fact]
    public void So_many_nodes_carry_a_phase() => Gen.Select(Gen.Double[0.0, 8.0], Gen.Double[0.0, 3.0], Gen.Double[2.0, 12.0]).Sample((steady, bent, digits) =>
    {
        // Derived: the bound is 4ρ/(ρ−1) times what the number of nodes is chosen by; the smallest ellipse has ρ = 1.25.
        if (Smoothness.Nodes(steady, bent, 100.0, digits) is int nodes)
        {
            double error = Error(ChebyshevRule.Of(nodes), x => Complex.FromPolarCoordinates(1.0, (steady * x) + (0.5 * bent * x * x)));
            Close.Absolute(0.0, error, 20.0 * Math.Exp(-digits));
        }
    });

    [Fact]
    public void So_many_nodes_carry_what_a_source_nearby_gives() => Gen.Select(Gen.Double[0.7, 5.0], Gen.Double[2.0, 12.0]).Sample((distance, digits) =>
    {
        // 1/R of a source beside the middle, relative to its largest value. Derived: at 0.8 of the ellipse that reaches the source it has grown less than
        // threefold, and 4/(ρ−1) is less than 8 there.
        if (Smoothness.Nodes(0.0, 0.0, distance, digits) is int nodes)
        {
            Close.Absolute(
                0.0, Error(ChebyshevRule.Of(nodes), x => distance / Math.Sqrt((distance * distance) + (x * x))), 24.0 * Math.Exp(-digits));
        }
    });

    [Fact]
    public void A_side_without_length_takes_one() => Assert.Equal(1, Smoothness.Nodes(0.0, 0.0, double.PositiveInfinity, 9.0));

    [Fact]
    public void Too_near_there_are_none() => Assert.Null(Smoothness.Nodes(1.0, 0.0, 0.05, 9.0));

    [Fact]
    public void Too_fast_a_phase_there_are_none() => Assert.Null(Smoothness.Nodes(40.0, 0.0, 10.0, 9.0));
}
