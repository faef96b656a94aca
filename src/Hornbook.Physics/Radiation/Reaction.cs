using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>The Lorentz reaction between two sets of currents, from which the link follows.</summary>
public static class Reaction
{
    private const int BlockLength = 64;

    /// <summary>⟨a,b⟩ = Σ (E_a·J_b − H_a·M_b) [W], the field of a at the currents of b. Allocates nothing.</summary>
    /// <param name="sending">Currents a.</param>
    /// <param name="receiving">Currents b, as they flow when that antenna sends; none at the place of one of a.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wavenumber is out of its range.</exception>
    /// <remarks>
    /// Eq. radiation (8). Symmetric in a and b (Rumsey 1954; [Harrington1961]): swapping source and receiver changes nothing. For
    /// antennas of one watt radiated, S21 = ⟨a,b⟩/4, Eq. radiation (10).
    /// </remarks>
    public static Complex Between(CurrentSamples sending, CurrentSamples receiving, double wavenumber)
    {
        ArgumentNullException.ThrowIfNull(receiving);
        Span<FieldSample> fields = stackalloc FieldSample[BlockLength];
        Complex sum = Complex.Zero;
        for (int first = 0; first < receiving.Count; first += BlockLength)
        {
            int length = Math.Min(BlockLength, receiving.Count - first);
            RadiatedField.Evaluate(sending, wavenumber, receiving.Points.Slice(first, length), fields);
            sum += Sum(fields[..length], receiving.Electric.Slice(first, length), receiving.Magnetic.Slice(first, length));
        }

        return sum;
    }

    private static Complex Sum(ReadOnlySpan<FieldSample> fields, ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> magnetic)
    {
        Complex sum = Complex.Zero;
        for (int i = 0; i < fields.Length; i++)
        {
            sum += ComplexVector.Dot(fields[i].Electric, electric[i]) - ComplexVector.Dot(fields[i].Magnetic, magnetic[i]);
        }

        return sum;
    }
}
