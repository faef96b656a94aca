using System.Numerics;
using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation;

/// <summary>The far field of sampled currents: directions in the lanes, one source broadcast at a time.</summary>
/// <remarks>As in <see cref="FieldKernel{T}"/>, no call may stand in the loop: lanes that live across a call are kept in memory.</remarks>
internal static class FarFieldKernel<T>
    where T : unmanaged, ILanes<T>
{
    private const int Components = VectorLanes<T>.Components;

    /// <summary>r E e^{+jkr} [V] in each direction; there is room for as many fields.</summary>
    internal static void Evaluate(CurrentSamples currents, double wavenumber, ReadOnlySpan<Vector> directions, Span<ComplexVector> fields)
    {
        Span<T> sums = stackalloc T[2 * Components];
        Span<double> lanes = stackalloc double[2 * Components * T.Count];
        for (int first = 0; first < directions.Length; first += T.Count)
        {
            ReadOnlySpan<Vector> block = directions[first..];
            VectorLanes<T>.Gather(block, wavenumber / (2.0 * Math.PI), lanes);
            Add(currents.Points, currents.Electric, lanes, sums[..Components]);
            Add(currents.Points, currents.Magnetic, lanes, sums[Components..]);
            VectorLanes<T>.Spread(sums, lanes);
            for (int i = 0; i < Math.Min(T.Count, block.Length); i++)
            {
                ComplexVector electric = VectorLanes<T>.Phasor(lanes, i);
                ComplexVector magnetic = VectorLanes<T>.Phasor(lanes[(Components * T.Count)..], i);
                fields[first + i] = Transverse(block[i], electric, magnetic, wavenumber);
            }
        }
    }

    /// <summary>Σ c e^{jk d·r'} over the sources, directions already in turns per metre.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Add(ReadOnlySpan<Vector> points, ReadOnlySpan<ComplexVector> currents, ReadOnlySpan<double> lanes, Span<T> sums)
    {
        T dx = T.Load(lanes), dy = T.Load(lanes[T.Count..]), dz = T.Load(lanes[(2 * T.Count)..]);
        T xr = T.All(0.0), xi = xr, yr = xr, yi = xr, zr = xr, zi = xr;
        for (int s = 0; s < points.Length; s++)
        {
            ref readonly Vector p = ref points[s];
            ref readonly ComplexVector c = ref currents[s];
            T turns = T.MultiplyAdd(dx, T.All(p.X), T.MultiplyAdd(dy, T.All(p.Y), dz * T.All(p.Z)));
            (T cos, T sin) = Turns.CosSin(turns);
            xr = T.MultiplyAdd(cos, T.All(c.X.Real), T.MultiplyAdd(-sin, T.All(c.X.Imaginary), xr));
            xi = T.MultiplyAdd(cos, T.All(c.X.Imaginary), T.MultiplyAdd(sin, T.All(c.X.Real), xi));
            yr = T.MultiplyAdd(cos, T.All(c.Y.Real), T.MultiplyAdd(-sin, T.All(c.Y.Imaginary), yr));
            yi = T.MultiplyAdd(cos, T.All(c.Y.Imaginary), T.MultiplyAdd(sin, T.All(c.Y.Real), yi));
            zr = T.MultiplyAdd(cos, T.All(c.Z.Real), T.MultiplyAdd(-sin, T.All(c.Z.Imaginary), zr));
            zi = T.MultiplyAdd(cos, T.All(c.Z.Imaginary), T.MultiplyAdd(sin, T.All(c.Z.Real), zi));
        }

        sums[0] = xr;
        sums[1] = xi;
        sums[2] = yr;
        sums[3] = yi;
        sums[4] = zr;
        sums[5] = zi;
    }

    private static ComplexVector Transverse(Vector direction, ComplexVector electric, ComplexVector magnetic, double wavenumber)
    {
        ComplexVector n = electric * Constants.VacuumImpedance;
        ComplexVector across = n + ComplexVector.Along(direction, -n.Component(direction)) + (ComplexVector.Cross(direction, magnetic) * -1.0);
        return across * new Complex(0.0, -wavenumber / (4.0 * Math.PI));
    }
}
