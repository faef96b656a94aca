using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The sums over a strip of sources without magnetic currents, as metal has.</summary>
/// <remarks>Eq. radiation (9) without the products with nothing: half the work of <see cref="CurrentSums{T}"/>.</remarks>
internal static class ElectricSums<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Adds E and jηH, each as real and imaginary parts of x, y and z.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> electric, Span<T> sums)
    {
        T exr = sums[0], exi = sums[1], eyr = sums[2], eyi = sums[3], ezr = sums[4], ezi = sums[5];
        T hxr = sums[6], hxi = sums[7], hyr = sums[8], hyi = sums[9], hzr = sums[10], hzi = sums[11];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            ref readonly ComplexVector c = ref electric[s];
            T jxr = T.Broadcast(c.X.Real), jxi = T.Broadcast(c.X.Imaginary);
            T jyr = T.Broadcast(c.Y.Real), jyi = T.Broadcast(c.Y.Imaginary);
            T jzr = T.Broadcast(c.Z.Real), jzi = T.Broadcast(c.Z.Imaginary);
            T x = g.X, y = g.Y, z = g.Z;

            T ar = T.MultiplyAdd(x, jxr, T.MultiplyAdd(y, jyr, z * jzr)); // along R̂
            T ai = T.MultiplyAdd(x, jxi, T.MultiplyAdd(y, jyi, z * jzi));
            T pr = T.MultiplyAdd(g.RadialReal, ar, -(g.RadialImaginary * ai));
            T pi = T.MultiplyAdd(g.RadialReal, ai, g.RadialImaginary * ar);
            T tr = g.DirectReal, ti = g.DirectImaginary;
            exr = T.MultiplyAdd(pr, x, T.MultiplyAdd(tr, jxr, T.MultiplyAdd(-ti, jxi, exr)));
            exi = T.MultiplyAdd(pi, x, T.MultiplyAdd(tr, jxi, T.MultiplyAdd(ti, jxr, exi)));
            eyr = T.MultiplyAdd(pr, y, T.MultiplyAdd(tr, jyr, T.MultiplyAdd(-ti, jyi, eyr)));
            eyi = T.MultiplyAdd(pi, y, T.MultiplyAdd(tr, jyi, T.MultiplyAdd(ti, jyr, eyi)));
            ezr = T.MultiplyAdd(pr, z, T.MultiplyAdd(tr, jzr, T.MultiplyAdd(-ti, jzi, ezr)));
            ezi = T.MultiplyAdd(pi, z, T.MultiplyAdd(tr, jzi, T.MultiplyAdd(ti, jzr, ezi)));

            T cr = g.CurlReal, ci = g.CurlMinusImaginary;
            T vr = T.MultiplyAdd(y, jzr, -(z * jyr)), vi = T.MultiplyAdd(y, jzi, -(z * jyi)); // R̂ × J
            hxr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, hxr));
            hxi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, hxi));
            vr = T.MultiplyAdd(z, jxr, -(x * jzr));
            vi = T.MultiplyAdd(z, jxi, -(x * jzi));
            hyr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, hyr));
            hyi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, hyi));
            vr = T.MultiplyAdd(x, jyr, -(y * jxr));
            vi = T.MultiplyAdd(x, jyi, -(y * jxi));
            hzr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, hzr));
            hzi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, hzi));
        }

        sums[0] = exr;
        sums[1] = exi;
        sums[2] = eyr;
        sums[3] = eyi;
        sums[4] = ezr;
        sums[5] = ezi;
        sums[6] = hxr;
        sums[7] = hxi;
        sums[8] = hyr;
        sums[9] = hyi;
        sums[10] = hzr;
        sums[11] = hzi;
    }
}
