using System.Collections.Concurrent;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Radiation;

/// <summary>Directions and weights that integrate smooth functions over all directions: Gauss–Legendre in the cosine from +x, equal steps around it.</summary>
public static class SphereQuadrature
{
    // A spherical wave expansion of a source of radius a dies out beyond degree ka; ten more give the rounding level [Hansen1988].
    private const int GuardDegrees = 10;

    private static readonly ConcurrentDictionary<int, (Vector Direction, double Weight)[]> Rules = new();

    /// <summary>A rule that is exact, to rounding, for the power pattern of sources within a radius of the origin.</summary>
    /// <param name="electricalRadius">k times the radius [-]; ≥ 0.</param>
    /// <returns>Unit vectors and weights; the weights add up to 4π.</returns>
    public static IReadOnlyList<(Vector Direction, double Weight)> ForRadius(double electricalRadius) =>
        Rules.GetOrAdd((int)Math.Ceiling(Require.NotNegative(electricalRadius)) + GuardDegrees, Rule);

    private static (Vector Direction, double Weight)[] Rule(int degree)
    {
        // The power pattern has twice the degree of the field.
        GaussLegendreRule polar = new(-1.0, 1.0, degree + 1);
        int around = (2 * degree) + 1;
        List<(Vector, double)> rule = new(polar.Order * around);
        for (int i = 0; i < polar.Order; i++)
        {
            double x = polar.Abscissas[i];
            double sine = Math.Sqrt(1.0 - (x * x));
            for (int j = 0; j < around; j++)
            {
                (double s, double c) = Math.SinCos(2.0 * Math.PI * j / around);
                rule.Add((new Vector(x, sine * c, sine * s), polar.Weights[i] * 2.0 * Math.PI / around));
            }
        }

        return [.. rule];
    }
}
