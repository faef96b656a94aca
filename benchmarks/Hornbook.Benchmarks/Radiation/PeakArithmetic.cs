using System.Runtime.CompilerServices;
using Hornbook.Physics.Radiation;

namespace Hornbook.Benchmarks.Radiation;

/// <summary>As many multiply-adds as one core can do: twelve chains that never wait for each other nor for memory.</summary>
internal static class PeakArithmetic<T>
    where T : unmanaged, ILanes<T>
{
    private const int Chains = 12;

    /// <summary>Does a number of floating-point operations, a multiply-add counted as two.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Run(long operations)
    {
        // x ← x·(1−2⁻²⁰) + 2⁻²⁰ stays near one, far from numbers that would be slow.
        T factor = T.All(1.0 - (1.0 / 1048576.0));
        T term = T.All(1.0 / 1048576.0);
        T a = T.All(0.1), b = T.All(0.2), c = T.All(0.3), d = T.All(0.4), e = T.All(0.5), f = T.All(0.6);
        T g = T.All(0.7), h = T.All(0.8), i = T.All(0.9), j = T.All(1.1), k = T.All(1.2), l = T.All(1.3);
        for (long left = operations; left > 0; left -= 2 * Chains * T.Count)
        {
            a = T.MultiplyAdd(a, factor, term);
            b = T.MultiplyAdd(b, factor, term);
            c = T.MultiplyAdd(c, factor, term);
            d = T.MultiplyAdd(d, factor, term);
            e = T.MultiplyAdd(e, factor, term);
            f = T.MultiplyAdd(f, factor, term);
            g = T.MultiplyAdd(g, factor, term);
            h = T.MultiplyAdd(h, factor, term);
            i = T.MultiplyAdd(i, factor, term);
            j = T.MultiplyAdd(j, factor, term);
            k = T.MultiplyAdd(k, factor, term);
            l = T.MultiplyAdd(l, factor, term);
        }

        return First(a + b + c + d + e + f + g + h + i + j + k + l);
    }

    private static double First(T value)
    {
        Span<double> lanes = stackalloc double[T.Count];
        value.Store(lanes);
        return lanes[0];
    }
}
