using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>The Lorentz reaction between two sets of currents, from which the link follows.</summary>
public static class Reaction
{
    /// <summary>⟨a,b⟩ = Σ (E_a·J_b − H_a·M_b) [W], the field of a at the currents of b.</summary>
    /// <param name="sending">Currents a.</param>
    /// <param name="receiving">Currents b, as they flow when that antenna sends.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <remarks>Symmetric in a and b (Rumsey 1954; [Harrington2001] § 3-8): swapping source and receiver changes nothing.</remarks>
    public static Complex Between(CurrentSamples sending, CurrentSamples receiving, double wavenumber)
    {
        ArgumentNullException.ThrowIfNull(receiving);
        FieldSample[] fields = new FieldSample[receiving.Count];
        RadiatedField.Evaluate(sending, wavenumber, receiving.Points, fields);
        Complex sum = Complex.Zero;
        for (int i = 0; i < fields.Length; i++)
        {
            sum += ComplexVector.Dot(fields[i].Electric, receiving.Electric[i]) - ComplexVector.Dot(fields[i].Magnetic, receiving.Magnetic[i]);
        }

        return sum;
    }
}
