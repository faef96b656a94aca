using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>The field far away from sampled currents, where only its direction matters.</summary>
public static class FarField
{
    /// <summary>The far electric field times distance and phase, r E e^{+jkr} [V], in one direction.</summary>
    /// <param name="currents">Sources.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="direction">Unit vector towards the observer.</param>
    /// <remarks>
    /// Eq. radiation (5): r E e^{jkr} = −(jk/4π) [η N − η (N·d)d − d × L], N = Σ J e^{jk d·r'}, L = Σ M e^{jk d·r'} [Balanis2016].
    /// </remarks>
    public static ComplexVector At(CurrentSamples currents, double wavenumber, Vector direction)
    {
        ArgumentNullException.ThrowIfNull(currents);
        ComplexVector electric = default, magnetic = default;
        ReadOnlySpan<Vector> points = currents.Points;
        for (int i = 0; i < points.Length; i++)
        {
            (double sine, double cosine) = Math.SinCos(wavenumber * Vector.Dot(direction, points[i]));
            Complex phase = new(cosine, sine);
            electric += currents.Electric[i] * phase;
            magnetic += currents.Magnetic[i] * phase;
        }

        ComplexVector n = electric * Constants.VacuumImpedance;
        ComplexVector transverse = n + ComplexVector.Along(direction, -n.Component(direction)) + (ComplexVector.Cross(direction, magnetic) * -1.0);
        return transverse * new Complex(0.0, -wavenumber / (4.0 * Math.PI));
    }

    /// <summary>Power per solid angle, U = |r E|²/2η [W/sr], in one direction.</summary>
    /// <inheritdoc cref="At"/>
    public static double Intensity(CurrentSamples currents, double wavenumber, Vector direction) =>
        At(currents, wavenumber, direction).SquaredMagnitude / (2.0 * Constants.VacuumImpedance);

    /// <summary>The whole power that the currents radiate [W], from their far field over the sphere.</summary>
    /// <param name="currents">Sources, around the origin.</param>
    /// <param name="wavenumber">k [1/m]; finite, &gt; 0.</param>
    /// <remarks>Exact to rounding for the sphere rule's band limit, which is set from the farthest source.</remarks>
    public static double RadiatedPower(CurrentSamples currents, double wavenumber)
    {
        ArgumentNullException.ThrowIfNull(currents);
        double radius = 0.0;
        foreach (Vector point in currents.Points)
        {
            radius = Math.Max(radius, point.Length);
        }

        double sum = 0.0;
        foreach ((Vector direction, double weight) in SphereQuadrature.ForRadius(wavenumber * radius))
        {
            sum += weight * Intensity(currents, wavenumber, direction);
        }

        return sum;
    }
}
