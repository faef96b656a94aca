using System.Collections.Concurrent;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Radiation;

/// <summary>Directions and weights that integrate smooth functions over all directions: Gauss–Legendre in the cosine from +x, equal steps around it.</summary>
public sealed class SphereQuadrature
{
    private static readonly ConcurrentDictionary<int, SphereQuadrature> Rules = new();

    private readonly Vector[] _directions;
    private readonly double[] _weights;

    private SphereQuadrature(int degree)
    {
        // The power pattern has twice the degree of the field.
        GaussLegendreRule polar = new(-1.0, 1.0, degree + 1);
        int around = (2 * degree) + 1;
        _directions = new Vector[polar.Order * around];
        _weights = new double[polar.Order * around];
        for (int i = 0; i < polar.Order; i++)
        {
            double x = polar.Abscissas[i];
            double sine = Math.Sqrt(1.0 - (x * x));
            for (int j = 0; j < around; j++)
            {
                (double s, double c) = Math.SinCos(2.0 * Math.PI * j / around);
                _directions[(i * around) + j] = new Vector(x, sine * c, sine * s);
                _weights[(i * around) + j] = polar.Weights[i] * 2.0 * Math.PI / around;
            }
        }
    }

    /// <summary>Unit vectors, length n.</summary>
    public ReadOnlySpan<Vector> Directions => _directions;

    /// <summary>Weights [sr], length n; they add up to 4π.</summary>
    public ReadOnlySpan<double> Weights => _weights;

    /// <summary>A rule that integrates the power pattern of sources within a radius of the origin to nine digits or better.</summary>
    /// <param name="electricalRadius">k times the radius [-]; ≥ 0.</param>
    public static SphereQuadrature ForRadius(double electricalRadius) =>
        Rules.GetOrAdd(
            (int)Math.Ceiling(Require.NotNegative(electricalRadius) + GuardDegrees(electricalRadius)), degree => new SphereQuadrature(degree));

    // The spherical harmonics of a source of radius a die out beyond degree ka [Hansen1988], over a stretch that widens with the cube root
    // of ka. Derived: for two point sources 2a apart, the worst case, the first harmonic that the rule misses, (2n+1) j_n(2ka), is at most
    // 3e-10 with these for any ka up to 300.
    private static double GuardDegrees(double electricalRadius) => Math.Max(10.0, 5.0 * Math.Cbrt(electricalRadius));
}
