using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

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
    private const int Components = VectorLanes<T>.Components;

    // Sums of one set of currents: E and H.
    private const int SetLength = 2 * Components;

    // Of bytes. Registers that lie across two lines take longer to keep and to fetch: a tenth of the whole.
    private const int CacheLine = 64;

    /// <summary>E and H at points; there is room for as many fields.</summary>
    internal static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields) =>
        Evaluate(currents.Spans, wavenumber, points, fields);

    /// <summary>The same, of currents wherever they are kept; of several sets at the same places, what lies between a place and an observer is worked out once for all.</summary>
    /// <param name="currents">Sources.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="points">Observers [m], length n.</param>
    /// <param name="fields">Filled: n of each set, set after set.</param>
    /// <param name="part">What is asked for.</param>
    internal static void Evaluate(CurrentSpans currents, double wavenumber, ReadOnlySpan<Vector> points, Span<FieldSample> fields, FieldPart part = FieldPart.Whole)
    {
        Span<GreenTerms<T>> strip = Aligned(stackalloc byte[(StripLength * Unsafe.SizeOf<GreenTerms<T>>()) + CacheLine]);
        Span<T> sums = stackalloc T[currents.Sets * SetLength];
        Span<double> lanes = stackalloc double[SetLength * T.Count];
        for (int first = 0; first < points.Length; first += T.Count)
        {
            VectorLanes<T>.Gather(points[first..], 1.0, lanes);
            sums.Clear();
            for (int s = 0; s < currents.Points.Length; s += StripLength)
            {
                int length = Math.Min(StripLength, currents.Points.Length - s);
                Fill(strip[..length], currents.Points.Slice(s, length), lanes, wavenumber);
                for (int set = 0; set < currents.Sets; set++)
                {
                    Add(strip[..length], currents.Slice(s, length, set), part, sums.Slice(set * SetLength, SetLength));
                }
            }

            for (int set = 0; set < currents.Sets; set++)
            {
                Scatter(sums.Slice(set * SetLength, SetLength), wavenumber, lanes, fields.Slice((set * points.Length) + first, Math.Min(T.Count, points.Length - first)));
            }
        }
    }

    /// <summary>The strip in memory of the stack, which stays where it is.</summary>
    private static Span<GreenTerms<T>> Aligned(Span<byte> room)
    {
        nint address = Unsafe.ByteOffset(ref Unsafe.NullRef<byte>(), ref MemoryMarshal.GetReference(room));
        int past = (int)(address % CacheLine);
        return MemoryMarshal.Cast<byte, GreenTerms<T>>(room[(past == 0 ? 0 : CacheLine - past)..])[..StripLength];
    }

    /// <summary>First pass.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Fill(Span<GreenTerms<T>> strip, ReadOnlySpan<Vector> sources, ReadOnlySpan<double> lanes, double wavenumber)
    {
        T x = T.Load(lanes);
        T y = T.Load(lanes[T.Count..]);
        T z = T.Load(lanes[(2 * T.Count)..]);
        T perWavelength = T.All(wavenumber / (2.0 * Math.PI)), perRadian = T.All(1.0 / wavenumber);
        for (int s = 0; s < strip.Length; s++)
        {
            strip[s].Set(in sources[s], x, y, z, perWavelength, perRadian);
        }
    }

    /// <summary>Second pass: E from J with jM/η as its dual, jηH from jM/η with J as its dual. One formula for both, or a short one where it will do.</summary>
    private static void Add(ReadOnlySpan<GreenTerms<T>> strip, CurrentSpans currents, FieldPart part, Span<T> sums)
    {
        switch (currents.Kind)
        {
            case CurrentKind.Mouth:
                MouthSums<T>.Add(strip, currents.Electric, currents.Dual, sums);
                break;
            case CurrentKind.Electric:
                ElectricSums<T>.Add(strip, currents.Electric, sums);
                break;
            case CurrentKind.ElectricPlane:
                PlaneSums<T>.AddElectric(strip, currents.Electric, sums);
                break;
            case CurrentKind.Plane:
                if (part == FieldPart.Whole)
                {
                    PlaneSums<T>.Add(strip, currents.Electric, currents.Dual, onlyAlong: false, sums[..Components]);
                }

                PlaneSums<T>.Add(strip, currents.Dual, currents.Electric, part == FieldPart.MagneticAlong, sums[Components..]);
                break;
            default:
                if (part == FieldPart.Whole)
                {
                    CurrentSums<T>.Add(strip, currents.Electric, currents.Dual, sums[..Components]);
                }

                CurrentSums<T>.Add(strip, currents.Dual, currents.Electric, sums[Components..]);
                break;
        }
    }

    /// <summary>Lanes to fields: E = η k²/4π Σ and H = −j k²/4π Σ.</summary>
    private static void Scatter(ReadOnlySpan<T> sums, double wavenumber, Span<double> lanes, Span<FieldSample> fields)
    {
        VectorLanes<T>.Spread(sums, lanes);
        double scale = wavenumber * wavenumber / (4.0 * Math.PI);
        for (int i = 0; i < fields.Length; i++)
        {
            ComplexVector electric = VectorLanes<T>.Phasor(lanes, i);
            ComplexVector magnetic = VectorLanes<T>.Phasor(lanes[(Components * T.Count)..], i);
            fields[i] = new FieldSample(electric * (Constants.VacuumImpedance * scale), magnetic * new Complex(0.0, -scale));
        }
    }
}
