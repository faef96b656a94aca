using System.Numerics;
using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The field of sampled currents: observers in the lanes, one source broadcast at a time.</summary>
/// <remarks>
/// Two passes over strips of sources: first the <see cref="GreenTerms{T}"/> of a strip, which then lie in the nearest cache, then the sums.
/// One pass would wait for sine and cosine where two keep the multipliers busy. In both loops every call must be inlined: lanes that
/// live across a call are kept in memory. Measured in docs/performance.md; the scalar form that this must equal is in the tests.
/// </remarks>
internal static class FieldKernel<T>
    where T : unmanaged, ILanes<T>
{
    private const int StripLength = 32;
    private const int Components = 6;

    /// <summary>E and H at points; there is room for as many fields.</summary>
    internal static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields)
    {
        Span<GreenTerms<T>> strip = stackalloc GreenTerms<T>[StripLength];
        Span<T> sums = stackalloc T[2 * Components];
        Span<double> lanes = stackalloc double[2 * Components * T.Count];
        for (int first = 0; first < points.Length; first += T.Count)
        {
            Gather(points[first..], lanes);
            sums.Clear();
            for (int s = 0; s < currents.Count; s += StripLength)
            {
                int length = Math.Min(StripLength, currents.Count - s);
                Fill(strip[..length], currents.Points.Slice(s, length), lanes, wavenumber);
                Add(strip[..length], currents.Electric.Slice(s, length), currents.Dual.Slice(s, length), sums[..Components]);
                Add(strip[..length], currents.Dual.Slice(s, length), currents.Electric.Slice(s, length), sums[Components..]);
            }

            Scatter(sums, wavenumber, lanes, fields[first..]);
        }
    }

    /// <summary>Observers to lanes; where they run out, the last one again.</summary>
    private static void Gather(ReadOnlySpan<Vector> points, Span<double> lanes)
    {
        for (int i = 0; i < T.Count; i++)
        {
            Vector point = points[Math.Min(i, points.Length - 1)];
            lanes[i] = point.X;
            lanes[T.Count + i] = point.Y;
            lanes[(2 * T.Count) + i] = point.Z;
        }
    }

    /// <summary>First pass.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Fill(Span<GreenTerms<T>> strip, ReadOnlySpan<Vector> sources, ReadOnlySpan<double> lanes, double wavenumber)
    {
        T x = T.Load(lanes);
        T y = T.Load(lanes[T.Count..]);
        T z = T.Load(lanes[(2 * T.Count)..]);
        T perWavelength = T.All(wavenumber / (2.0 * Math.PI));
        for (int s = 0; s < strip.Length; s++)
        {
            strip[s].Set(in sources[s], x, y, z, perWavelength);
        }
    }

    /// <summary>Second pass: E from J with jM/η as its dual, jηH from jM/η with J as its dual. One formula for both.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Add(
        ReadOnlySpan<GreenTerms<T>> strip, ReadOnlySpan<ComplexVector> currents, ReadOnlySpan<ComplexVector> duals, Span<T> sums)
    {
        T xr = sums[0], xi = sums[1], yr = sums[2], yi = sums[3], zr = sums[4], zi = sums[5];
        for (int s = 0; s < strip.Length; s++)
        {
            ref readonly GreenTerms<T> g = ref strip[s];
            ref readonly ComplexVector c = ref currents[s];
            T jxr = T.All(c.X.Real), jxi = T.All(c.X.Imaginary);
            T jyr = T.All(c.Y.Real), jyi = T.All(c.Y.Imaginary);
            T jzr = T.All(c.Z.Real), jzi = T.All(c.Z.Imaginary);
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
            T mxr = T.All(d.X.Real), mxi = T.All(d.X.Imaginary);
            T myr = T.All(d.Y.Real), myi = T.All(d.Y.Imaginary);
            T mzr = T.All(d.Z.Real), mzi = T.All(d.Z.Imaginary);
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

    /// <summary>Lanes to fields: E = η k²/4π Σ and H = −j k²/4π Σ.</summary>
    private static void Scatter(ReadOnlySpan<T> sums, double wavenumber, Span<double> lanes, Span<FieldSample> fields)
    {
        for (int c = 0; c < sums.Length; c++)
        {
            sums[c].Store(lanes[(c * T.Count)..]);
        }

        double scale = wavenumber * wavenumber / (4.0 * Math.PI);
        for (int i = 0; i < Math.Min(T.Count, fields.Length); i++)
        {
            ComplexVector electric = Lane(lanes, i);
            ComplexVector magnetic = Lane(lanes[(Components * T.Count)..], i);
            fields[i] = new FieldSample(electric * (Constants.VacuumImpedance * scale), magnetic * new Complex(0.0, -scale));
        }
    }

    private static ComplexVector Lane(ReadOnlySpan<double> lanes, int i) => new(
        new(lanes[i], lanes[T.Count + i]),
        new(lanes[(2 * T.Count) + i], lanes[(3 * T.Count) + i]),
        new(lanes[(4 * T.Count) + i], lanes[(5 * T.Count) + i]));
}
