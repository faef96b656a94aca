using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>cos kR and sin kR from one point to many others: as many in one step as there are lanes.</summary>
internal static class PointPhases<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>To the samples of a box; there is room for a register behind the last.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Fill(SampleTree body, SampleBox box, Vector centre, double wavenumber, PhaseSpans phases)
    {
        int first = box.First;
        ReadOnlySpan<double> x = body.Place(0)[first..], y = body.Place(1)[first..], z = body.Place(2)[first..];
        for (int i = 0; i < box.Count; i += T.Count)
        {
            Step(x[i..], y[i..], z[i..], centre, wavenumber, phases.Cos[i..], phases.Sin[i..]);
        }
    }

    /// <summary>To points; there is room for a register behind the last.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Fill(ReadOnlySpan<Vector> points, Vector centre, double wavenumber, PhaseSpans phases)
    {
        Span<double> lanes = stackalloc double[3 * T.Count];
        for (int i = 0; i < points.Length; i += T.Count)
        {
            VectorLanes<T>.Gather(points[i..], 1.0, lanes);
            Step(lanes, lanes[T.Count..], lanes[(2 * T.Count)..], centre, wavenumber, phases.Cos[i..], phases.Sin[i..]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Step(
        ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> z, Vector centre, double wavenumber, Span<double> cos, Span<double> sin)
    {
        T dx = T.Load(x) - T.All(centre.X), dy = T.Load(y) - T.All(centre.Y), dz = T.Load(z) - T.All(centre.Z);
        T distance = T.Sqrt(T.MultiplyAdd(dx, dx, T.MultiplyAdd(dy, dy, dz * dz)));
        (T c, T s) = Turns.CosSin(distance * T.All(wavenumber / (2.0 * Math.PI)));
        c.Store(cos);
        s.Store(sin);
    }
}
