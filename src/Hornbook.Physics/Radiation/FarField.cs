using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>The field far away from sampled currents, where only its direction matters.</summary>
public static class FarField
{
    /// <summary>The far electric field times distance and phase, r E e^{+jkr} [V], in many directions. Allocates nothing.</summary>
    /// <param name="currents">Sources.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="directions">Unit vectors towards the observers, length n.</param>
    /// <param name="fields">Filled with the fields, length ≥ n.</param>
    /// <exception cref="ArgumentException">There is not room for the fields.</exception>
    /// <remarks>
    /// Eq. radiation (5): r E e^{jkr} = −(jk/4π) [η N − η (N·d)d − d × L], N = Σ J e^{jk d·r'}, L = Σ M e^{jk d·r'} [Balanis2016].
    /// </remarks>
    public static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> directions, Span<ComplexVector> fields)
    {
        ArgumentNullException.ThrowIfNull(currents);
        if (fields.Length < directions.Length)
        {
            throw new ArgumentException($"room for {fields.Length} fields in {directions.Length} directions; as many are needed");
        }

        if (Vector512.IsHardwareAccelerated)
        {
            FarFieldKernel<Lanes512>.Evaluate(currents, wavenumber, directions, fields);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            FarFieldKernel<Lanes256>.Evaluate(currents, wavenumber, directions, fields);
        }
        else
        {
            FarFieldKernel<Lanes128>.Evaluate(currents, wavenumber, directions, fields);
        }
    }

    /// <summary>The far electric field times distance and phase, r E e^{+jkr} [V], in one direction.</summary>
    /// <inheritdoc cref="Evaluate"/>
    public static ComplexVector At(CurrentSamples currents, double wavenumber, Vector direction)
    {
        ComplexVector field = default;
        Evaluate(currents, wavenumber, [direction], new Span<ComplexVector>(ref field));
        return field;
    }

    /// <summary>Power per solid angle, U = |r E|²/2η [W/sr], in one direction.</summary>
    /// <inheritdoc cref="Evaluate"/>
    public static double Intensity(CurrentSamples currents, double wavenumber, Vector direction) =>
        Intensity(At(currents, wavenumber, direction));

    /// <summary>The whole power that the currents radiate [W], from their far field over the sphere.</summary>
    /// <param name="currents">Sources, around the origin.</param>
    /// <param name="wavenumber">k [1/m]; finite, &gt; 0.</param>
    /// <remarks>Nine digits: the sphere rule is chosen for the farthest source.</remarks>
    public static double RadiatedPower(CurrentSamples currents, double wavenumber)
    {
        ArgumentNullException.ThrowIfNull(currents);
        double radius = 0.0;
        foreach (Vector point in currents.Points)
        {
            radius = Math.Max(radius, point.Length);
        }

        SphereQuadrature sphere = SphereQuadrature.ForRadius(wavenumber * radius);
        ComplexVector[] fields = new ComplexVector[sphere.Directions.Length];
        Evaluate(currents, wavenumber, sphere.Directions, fields);
        double sum = 0.0;
        for (int i = 0; i < fields.Length; i++)
        {
            sum += sphere.Weights[i] * Intensity(fields[i]);
        }

        return sum;
    }

    private static double Intensity(ComplexVector field) => field.SquaredMagnitude / (2.0 * Constants.VacuumImpedance);
}
