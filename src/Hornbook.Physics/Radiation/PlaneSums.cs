using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The sums over a strip of sources whose currents flow in the plane of y and z, as those of flat panels do in axes of their own.</summary>
/// <remarks>Eq. radiation (9) without the products with nothing: three quarters of the work of <see cref="CurrentSums{T}"/> and <see cref="ElectricSums{T}"/>.</remarks>
internal static class PlaneSums<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Adds the field of currents and their duals: real and imaginary parts of x, y and z.</summary>
    /// <param name="strip">From the sources to the observers.</param>
    /// <param name="currents">J or jM/η.</param>
    /// <param name="duals">The other.</param>
    /// <param name="onlyAlong">Whether the part along the plane is enough: to x nothing is then added, which saves a quarter.</param>
    /// <param name="sums">Added to.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(
        ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> currents, ReadOnlySpan<ComplexVector> duals, bool onlyAlong, Span<T> sums)
    {
        T xr = sums[0], xi = sums[1], yr = sums[2], yi = sums[3], zr = sums[4], zi = sums[5];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            ref readonly ComplexVector c = ref currents[s];
            T jyr = T.Broadcast(c.Y.Real), jyi = T.Broadcast(c.Y.Imaginary);
            T jzr = T.Broadcast(c.Z.Real), jzi = T.Broadcast(c.Z.Imaginary);
            T x = g.X, y = g.Y, z = g.Z;

            T ar = T.MultiplyAdd(y, jyr, z * jzr), ai = T.MultiplyAdd(y, jyi, z * jzi); // along R̂
            T pr = T.MultiplyAdd(g.RadialReal, ar, -(g.RadialImaginary * ai));
            T pi = T.MultiplyAdd(g.RadialReal, ai, g.RadialImaginary * ar);
            T tr = g.DirectReal, ti = g.DirectImaginary;
            yr = T.MultiplyAdd(pr, y, T.MultiplyAdd(tr, jyr, T.MultiplyAdd(-ti, jyi, yr)));
            yi = T.MultiplyAdd(pi, y, T.MultiplyAdd(tr, jyi, T.MultiplyAdd(ti, jyr, yi)));
            zr = T.MultiplyAdd(pr, z, T.MultiplyAdd(tr, jzr, T.MultiplyAdd(-ti, jzi, zr)));
            zi = T.MultiplyAdd(pi, z, T.MultiplyAdd(tr, jzi, T.MultiplyAdd(ti, jzr, zi)));

            ref readonly ComplexVector d = ref duals[s];
            T myr = T.Broadcast(d.Y.Real), myi = T.Broadcast(d.Y.Imaginary);
            T mzr = T.Broadcast(d.Z.Real), mzi = T.Broadcast(d.Z.Imaginary);
            T cr = g.CurlReal, ci = g.CurlMinusImaginary;
            T wr = x * cr, wi = x * ci; // R̂ × M' = (y m_z − z m_y, −x m_z, x m_y)
            yr = T.MultiplyAdd(-wr, mzr, T.MultiplyAdd(-wi, mzi, yr));
            yi = T.MultiplyAdd(-wr, mzi, T.MultiplyAdd(wi, mzr, yi));
            zr = T.MultiplyAdd(wr, myr, T.MultiplyAdd(wi, myi, zr));
            zi = T.MultiplyAdd(wr, myi, T.MultiplyAdd(-wi, myr, zi));
            if (onlyAlong)
            {
                continue;
            }

            T vr = T.MultiplyAdd(y, mzr, -(z * myr)), vi = T.MultiplyAdd(y, mzi, -(z * myi));
            xr = T.MultiplyAdd(pr, x, T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, xr)));
            xi = T.MultiplyAdd(pi, x, T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, xi)));
        }

        sums[0] = xr;
        sums[1] = xi;
        sums[2] = yr;
        sums[3] = yi;
        sums[4] = zr;
        sums[5] = zi;
    }

    /// <summary>Adds E and jηH of electric currents alone, each as real and imaginary parts of x, y and z.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddElectric(ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> electric, Span<T> sums)
    {
        T exr = sums[0], exi = sums[1], eyr = sums[2], eyi = sums[3], ezr = sums[4], ezi = sums[5];
        T hxr = sums[6], hxi = sums[7], hyr = sums[8], hyi = sums[9], hzr = sums[10], hzi = sums[11];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            ref readonly ComplexVector c = ref electric[s];
            T jyr = T.Broadcast(c.Y.Real), jyi = T.Broadcast(c.Y.Imaginary);
            T jzr = T.Broadcast(c.Z.Real), jzi = T.Broadcast(c.Z.Imaginary);
            T x = g.X, y = g.Y, z = g.Z;

            T ar = T.MultiplyAdd(y, jyr, z * jzr), ai = T.MultiplyAdd(y, jyi, z * jzi); // along R̂
            T pr = T.MultiplyAdd(g.RadialReal, ar, -(g.RadialImaginary * ai));
            T pi = T.MultiplyAdd(g.RadialReal, ai, g.RadialImaginary * ar);
            T tr = g.DirectReal, ti = g.DirectImaginary;
            exr = T.MultiplyAdd(pr, x, exr);
            exi = T.MultiplyAdd(pi, x, exi);
            eyr = T.MultiplyAdd(pr, y, T.MultiplyAdd(tr, jyr, T.MultiplyAdd(-ti, jyi, eyr)));
            eyi = T.MultiplyAdd(pi, y, T.MultiplyAdd(tr, jyi, T.MultiplyAdd(ti, jyr, eyi)));
            ezr = T.MultiplyAdd(pr, z, T.MultiplyAdd(tr, jzr, T.MultiplyAdd(-ti, jzi, ezr)));
            ezi = T.MultiplyAdd(pi, z, T.MultiplyAdd(tr, jzi, T.MultiplyAdd(ti, jzr, ezi)));

            T cr = g.CurlReal, ci = g.CurlMinusImaginary;
            T vr = T.MultiplyAdd(y, jzr, -(z * jyr)), vi = T.MultiplyAdd(y, jzi, -(z * jyi)); // R̂ × J = (y j_z − z j_y, −x j_z, x j_y)
            hxr = T.MultiplyAdd(cr, vr, T.MultiplyAdd(ci, vi, hxr));
            hxi = T.MultiplyAdd(cr, vi, T.MultiplyAdd(-ci, vr, hxi));
            T wr = x * cr, wi = x * ci;
            hyr = T.MultiplyAdd(-wr, jzr, T.MultiplyAdd(-wi, jzi, hyr));
            hyi = T.MultiplyAdd(-wr, jzi, T.MultiplyAdd(wi, jzr, hyi));
            hzr = T.MultiplyAdd(wr, jyr, T.MultiplyAdd(wi, jyi, hzr));
            hzi = T.MultiplyAdd(wr, jyi, T.MultiplyAdd(-wi, jyr, hzi));
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
