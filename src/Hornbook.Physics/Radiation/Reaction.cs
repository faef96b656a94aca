using System.Numerics;
using System.Runtime.CompilerServices;

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
    /// Eq. radiation (6). Symmetric in a and b (Rumsey 1954; [Harrington1961]): swapping source and receiver changes nothing. For
    /// antennas of one watt radiated, S21 = ⟨a,b⟩/4, Eq. radiation (7).
    /// </remarks>
    public static Complex Between(CurrentSamples sending, CurrentSamples receiving, double wavenumber) =>
        Between(sending, default, receiving, default, wavenumber);

    /// <summary>The same between currents that are given in their own frames and held in poses.</summary>
    /// <param name="sending">Currents a in their own frame.</param>
    /// <param name="sendingPose">How a is held.</param>
    /// <param name="receiving">Currents b in their own frame, as they flow when that antenna sends.</param>
    /// <param name="receivingPose">How b is held; no current of it at the place of one of a.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <inheritdoc cref="Between(CurrentSamples, CurrentSamples, double)"/>
    public static Complex Between(
        CurrentSamples sending, Pose sendingPose, CurrentSamples receiving, Pose receivingPose, double wavenumber)
    {
        ArgumentNullException.ThrowIfNull(receiving);
        Frame frame = Frame.Of(receivingPose).SeenFrom(Frame.Of(sendingPose));
        Span<Vector> points = stackalloc Vector[BlockLength];
        Span<FieldSample> fields = stackalloc FieldSample[BlockLength];
        Complex sum = Complex.Zero;
        for (int first = 0; first < receiving.Count; first += BlockLength)
        {
            int length = Math.Min(BlockLength, receiving.Count - first);
            Place(receiving.Points.Slice(first, length), frame, points);
            RadiatedField.Evaluate(sending, wavenumber, points[..length], fields);
            sum += Sum(fields[..length], frame, receiving.Electric[first..], receiving.Magnetic[first..]);
        }

        return sum;
    }

    /// <summary>The same of a field that is known where the currents flow.</summary>
    /// <param name="fields">Of currents a at each current of b.</param>
    /// <param name="receiving">Currents b.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static Complex Of(ReadOnlySpan<FieldSample> fields, CurrentSamples receiving)
    {
        Complex sum = Complex.Zero;
        for (int i = 0; i < receiving.Count; i++)
        {
            sum += ComplexVector.Dot(fields[i].Electric, receiving.Electric[i]) - ComplexVector.Dot(fields[i].Magnetic, receiving.Magnetic[i]);
        }

        return sum;
    }

    private static void Place(ReadOnlySpan<Vector> own, Frame frame, Span<Vector> points)
    {
        for (int i = 0; i < own.Length; i++)
        {
            points[i] = frame.Place(own[i]);
        }
    }

    private static Complex Sum(
        ReadOnlySpan<FieldSample> fields, Frame frame, ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> magnetic)
    {
        Complex sum = Complex.Zero;
        for (int i = 0; i < fields.Length; i++)
        {
            sum += ComplexVector.Dot(fields[i].Electric, frame.Turn(electric[i])) - ComplexVector.Dot(fields[i].Magnetic, frame.Turn(magnetic[i]));
        }

        return sum;
    }
}
