using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class SphereQuadratureTests
{
    private static double Integral(double electricalRadius, Func<Vector, double> f)
    {
        SphereQuadrature sphere = SphereQuadrature.ForRadius(electricalRadius);
        double sum = 0.0;
        for (int i = 0; i < sphere.Weights.Length; i++)
        {
            sum += sphere.Weights[i] * f(sphere.Directions[i]);
        }

        return sum;
    }

    public sealed class ForRadius
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(7.3)]
        [InlineData(40.0)]
        public void Integrates_low_powers_of_the_direction_exactly(double electricalRadius)
        {
            // Derived: over the unit sphere ∮1 = 4π, ∮x² = ∮y² = 4π/3, ∮x⁴ = 4π/5, ∮x²z² = 4π/15, ∮x y z² = 0.
            // The nodes that the library works out itself (above 20, outside its table) are good to 1e-11.
            double Integral(Func<Vector, double> f) => SphereQuadratureTests.Integral(electricalRadius, f);
            Close.Relative(4.0 * Math.PI, Integral(_ => 1.0), 2e-11);
            Close.Relative(4.0 * Math.PI / 3.0, Integral(d => d.X * d.X), 2e-11);
            Close.Relative(4.0 * Math.PI / 3.0, Integral(d => d.Y * d.Y), 2e-11);
            Close.Relative(4.0 * Math.PI / 5.0, Integral(d => Math.Pow(d.X, 4)), 2e-11);
            Close.Relative(4.0 * Math.PI / 15.0, Integral(d => d.X * d.X * d.Z * d.Z), 2e-11);
            Close.Absolute(0.0, Integral(d => d.X * d.Y * d.Z * d.Z), 2e-11);
        }

        [Theory]
        [InlineData(0.5)]
        [InlineData(12.0)]
        [InlineData(30.0)]
        [InlineData(60.0)]
        public void Integrates_the_interference_of_two_sources(double electricalRadius)
        {
            // Derived: ∮ cos(k s d·u) dΩ = 4π sin(ks)/ks for two sources s = 2a apart, a from the middle.
            Vector u = new Vector(0.2, 0.9, -0.4).Unit;
            double integral = Integral(electricalRadius, d => Math.Cos(2.0 * electricalRadius * Vector.Dot(d, u)));
            Close.Absolute(Math.Sin(2.0 * electricalRadius) / (2.0 * electricalRadius), integral / (4.0 * Math.PI), 3e-10);
        }

        [Theory]
        [InlineData(-1.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Refuses_a_radius_that_is_no_size(double electricalRadius) =>
            Assert.Throws<ArgumentOutOfRangeException>(nameof(electricalRadius), () => SphereQuadrature.ForRadius(electricalRadius));
    }
}
