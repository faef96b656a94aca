using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Radiation;

/// <summary>Sums over long lists of phasors: what mixing the sweeps of panels takes its time for.</summary>
/// <remarks>Real and imaginary parts lie in turns, two phasors' components in a register; the other part of each comes by swapping neighbours.</remarks>
internal static class PhasorSums
{
    private const int Step = 4;

    /// <summary>Adds phasors times a number to others.</summary>
    /// <param name="sum">Added to; at least as many as there are phasors.</param>
    /// <param name="phasors">The phasors.</param>
    /// <param name="factor">The number.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(Span<ComplexVector> sum, ReadOnlySpan<ComplexVector> phasors, Complex factor)
    {
        ReadOnlySpan<double> from = MemoryMarshal.Cast<ComplexVector, double>(phasors);
        Span<double> to = MemoryMarshal.Cast<ComplexVector, double>(sum)[..from.Length];
        Vector256<double> straight = Vector256.Create(factor.Real);
        Vector256<double> crosswise = Vector256.Create(-factor.Imaginary, factor.Imaginary, -factor.Imaginary, factor.Imaginary);
        int i = 0;
        for (; i + Step <= from.Length; i += Step)
        {
            Vector256<double> value = Vector256.Create(from.Slice(i, Step)), before = Vector256.Create((ReadOnlySpan<double>)to.Slice(i, Step));
            Vector256.MultiplyAddEstimate(straight, value, Vector256.MultiplyAddEstimate(crosswise, Swapped(value), before)).CopyTo(to.Slice(i, Step));
        }

        for (; i < from.Length; i += 2)
        {
            to[i] += (factor.Real * from[i]) - (factor.Imaginary * from[i + 1]);
            to[i + 1] += (factor.Real * from[i + 1]) + (factor.Imaginary * from[i]);
        }
    }

    /// <summary>Σ a*·b, as far as both go.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static Complex Inner(ReadOnlySpan<ComplexVector> a, ReadOnlySpan<ComplexVector> b)
    {
        ReadOnlySpan<double> first = MemoryMarshal.Cast<ComplexVector, double>(a), second = MemoryMarshal.Cast<ComplexVector, double>(b);
        int length = Math.Min(first.Length, second.Length), i = 0;
        Vector256<double> straight = Vector256<double>.Zero, crosswise = Vector256<double>.Zero;
        for (; i + Step <= length; i += Step)
        {
            Vector256<double> one = Vector256.Create(first.Slice(i, Step)), other = Vector256.Create(second.Slice(i, Step));
            straight = Vector256.MultiplyAddEstimate(one, other, straight);
            crosswise = Vector256.MultiplyAddEstimate(one, Swapped(other), crosswise);
        }

        // a*b = (a_r b_r + a_i b_i) + j (a_r b_i − a_i b_r)
        double real = Vector256.Sum(straight), imaginary = crosswise[0] - crosswise[1] + crosswise[2] - crosswise[3];
        for (; i < length; i += 2)
        {
            real += (first[i] * second[i]) + (first[i + 1] * second[i + 1]);
            imaginary += (first[i] * second[i + 1]) - (first[i + 1] * second[i]);
        }

        return new Complex(real, imaginary);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Swapped(Vector256<double> value) => Vector256.Shuffle(value, Vector256.Create(1L, 0L, 3L, 2L));
}
