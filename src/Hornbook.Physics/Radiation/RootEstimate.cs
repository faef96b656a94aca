using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>A square root and one over it from the machine's estimate of one over it, which takes less time than its exact root and quotient.</summary>
internal static class RootEstimate
{
    /// <summary>One step of Goldschmidt's doubles the digits of the estimate; the root is then put right by what its square misses.</summary>
    /// <param name="value">Of what; &gt; 0.</param>
    /// <param name="estimate">One over its root to 11 bits or more.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Root, T Inverse) Refined<T>(T value, T estimate)
        where T : unmanaged, ILanes<T>
    {
        T root = value * estimate, half = T.All(0.5) * estimate;
        T missing = T.MultiplyAdd(-half, root, T.All(0.5));
        root = T.MultiplyAdd(root, missing, root);
        half = T.MultiplyAdd(half, missing, half);
        return (T.MultiplyAdd(T.MultiplyAdd(-root, root, value), half, root), half + half);
    }
}
