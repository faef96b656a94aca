using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The sums over a strip of sources of a mouth: electric currents along z and magnetic ones along y, as every antenna here has in its own frame.</summary>
/// <remarks>Eq. radiation (9) without the products with nothing: half the work of <see cref="CurrentSums{T}"/>.</remarks>
internal static class MouthSums<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Adds E and jηH, each as real and imaginary parts of x, y and z.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> dual, Span<T> sums)
    {
        T exr = sums[0], exi = sums[1], eyr = sums[2], eyi = sums[3], ezr = sums[4], ezi = sums[5];
        T hxr = sums[6], hxi = sums[7], hyr = sums[8], hyi = sums[9], hzr = sums[10], hzi = sums[11];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            T jr = T.Broadcast(electric[s].Z.Real), ji = T.Broadcast(electric[s].Z.Imaginary);
            T mr = T.Broadcast(dual[s].Y.Real), mi = T.Broadcast(dual[s].Y.Imaginary);
            T x = g.X, y = g.Y, z = g.Z;

            ezr = T.MultiplyAdd(g.DirectReal, jr, T.MultiplyAdd(-g.DirectImaginary, ji, ezr));
            ezi = T.MultiplyAdd(g.DirectReal, ji, T.MultiplyAdd(g.DirectImaginary, jr, ezi));
            hyr = T.MultiplyAdd(g.DirectReal, mr, T.MultiplyAdd(-g.DirectImaginary, mi, hyr));
            hyi = T.MultiplyAdd(g.DirectReal, mi, T.MultiplyAdd(g.DirectImaginary, mr, hyi));

            T pr = z * T.MultiplyAdd(g.RadialReal, jr, -(g.RadialImaginary * ji)); // P (J·R̂)
            T pi = z * T.MultiplyAdd(g.RadialReal, ji, g.RadialImaginary * jr);
            exr = T.MultiplyAdd(pr, x, exr);
            exi = T.MultiplyAdd(pi, x, exi);
            eyr = T.MultiplyAdd(pr, y, eyr);
            eyi = T.MultiplyAdd(pi, y, eyi);
            ezr = T.MultiplyAdd(pr, z, ezr);
            ezi = T.MultiplyAdd(pi, z, ezi);
            pr = y * T.MultiplyAdd(g.RadialReal, mr, -(g.RadialImaginary * mi)); // P (M'·R̂)
            pi = y * T.MultiplyAdd(g.RadialReal, mi, g.RadialImaginary * mr);
            hxr = T.MultiplyAdd(pr, x, hxr);
            hxi = T.MultiplyAdd(pi, x, hxi);
            hyr = T.MultiplyAdd(pr, y, hyr);
            hyi = T.MultiplyAdd(pi, y, hyi);
            hzr = T.MultiplyAdd(pr, z, hzr);
            hzi = T.MultiplyAdd(pi, z, hzi);

            T cr = T.MultiplyAdd(g.CurlReal, mr, g.CurlMinusImaginary * mi); // S M', and R̂×ŷ = (−z, 0, x)
            T ci = T.MultiplyAdd(g.CurlReal, mi, -(g.CurlMinusImaginary * mr));
            exr = T.MultiplyAdd(-z, cr, exr);
            exi = T.MultiplyAdd(-z, ci, exi);
            ezr = T.MultiplyAdd(x, cr, ezr);
            ezi = T.MultiplyAdd(x, ci, ezi);
            cr = T.MultiplyAdd(g.CurlReal, jr, g.CurlMinusImaginary * ji); // S J', and R̂×ẑ = (y, −x, 0)
            ci = T.MultiplyAdd(g.CurlReal, ji, -(g.CurlMinusImaginary * jr));
            hxr = T.MultiplyAdd(y, cr, hxr);
            hxi = T.MultiplyAdd(y, ci, hxi);
            hyr = T.MultiplyAdd(-x, cr, hyr);
            hyi = T.MultiplyAdd(-x, ci, hyi);
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
