using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The sums over a strip of sources of any kind.</summary>
internal static class CurrentSums<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Adds the field of currents and their duals: real and imaginary parts of x, y and z. Eq. radiation (9).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(
        ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> currents, ReadOnlySpan<ComplexVector> duals, Span<T> sums)
    {
        T xr = sums[0], xi = sums[1], yr = sums[2], yi = sums[3], zr = sums[4], zi = sums[5];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            ref readonly ComplexVector c = ref currents[s];
            T jxr = T.Broadcast(c.X.Real), jxi = T.Broadcast(c.X.Imaginary);
            T jyr = T.Broadcast(c.Y.Real), jyi = T.Broadcast(c.Y.Imaginary);
            T jzr = T.Broadcast(c.Z.Real), jzi = T.Broadcast(c.Z.Imaginary);
            T x = g.X, y = g.Y, z = g.Z;

            T ar = T.MultiplyAdd(x, jxr, T.MultiplyAdd(y, jyr, z * jzr)); // along R̂
            T ai = T.MultiplyAdd(x, jxi, T.MultiplyAdd(y, jyi, z * jzi));
            T pr = T.MultiplyAdd(g.RadialReal, ar, -(g.RadialImaginary * ai));
            T pi = T.MultiplyAdd(g.RadialReal, ai, g.RadialImaginary * ar);
            T tr = g.DirectReal, ti = g.DirectImaginary;
            xr = T.MultiplyAdd(pr, x, T.MultiplyAdd(tr, jxr, T.MultiplyAdd(-ti, jxi, xr)));
            xi = T.MultiplyAdd(pi, x, T.MultiplyAdd(tr, jxi, T.MultiplyAdd(ti, jxr, xi)));
            yr = T.MultiplyAdd(pr, y, T.MultiplyAdd(tr, jyr, T.MultiplyAdd(-ti, jyi, yr)));
            yi = T.MultiplyAdd(pi, y, T.MultiplyAdd(tr, jyi, T.MultiplyAdd(ti, jyr, yi)));
            zr = T.MultiplyAdd(pr, z, T.MultiplyAdd(tr, jzr, T.MultiplyAdd(-ti, jzi, zr)));
            zi = T.MultiplyAdd(pi, z, T.MultiplyAdd(tr, jzi, T.MultiplyAdd(ti, jzr, zi)));

            ref readonly ComplexVector d = ref duals[s];
            T mxr = T.Broadcast(d.X.Real), mxi = T.Broadcast(d.X.Imaginary);
            T myr = T.Broadcast(d.Y.Real), myi = T.Broadcast(d.Y.Imaginary);
            T mzr = T.Broadcast(d.Z.Real), mzi = T.Broadcast(d.Z.Imaginary);
            T cr = g.CurlReal, ci = g.CurlMinusImaginary;
            T vr = T.MultiplyAdd(y, mzr, -(z * myr)), vi = T.MultiplyAdd(y, mzi, -(z * myi));
            xr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, xr));
            xi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, xi));
            vr = T.MultiplyAdd(z, mxr, -(x * mzr));
            vi = T.MultiplyAdd(z, mxi, -(x * mzi));
            yr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, yr));
            yi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, yi));
            vr = T.MultiplyAdd(x, myr, -(y * mxr));
            vi = T.MultiplyAdd(x, myi, -(y * mxi));
            zr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, zr));
            zi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, zi));
        }

        sums[0] = xr;
        sums[1] = xi;
        sums[2] = yr;
        sums[3] = yi;
        sums[4] = zr;
        sums[5] = zi;
    }
}
