using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>Between vectors one after another and vectors side by side in lanes.</summary>
internal static class VectorLanes<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Real and imaginary parts of x, y and z.</summary>
    internal const int Components = 6;

    /// <summary>Points times a factor to lanes of x, y and z; where the points run out, the last one again.</summary>
    internal static void Gather(ReadOnlySpan<Vector> points, double factor, Span<double> lanes)
    {
        for (int i = 0; i < T.Count; i++)
        {
            Vector point = points[Math.Min(i, points.Length - 1)] * factor;
            lanes[i] = point.X;
            lanes[T.Count + i] = point.Y;
            lanes[(2 * T.Count) + i] = point.Z;
        }
    }

    /// <summary>Components in registers to components in memory.</summary>
    internal static void Spread(ReadOnlySpan<T> components, Span<double> lanes)
    {
        for (int c = 0; c < components.Length; c++)
        {
            components[c].Store(lanes[(c * T.Count)..]);
        }
    }

    /// <summary>The phasor of one lane, of the six components that begin where the lanes begin.</summary>
    internal static ComplexVector Phasor(ReadOnlySpan<double> lanes, int lane) => new(
        new Complex(lanes[lane], lanes[T.Count + lane]),
        new Complex(lanes[(2 * T.Count) + lane], lanes[(3 * T.Count) + lane]),
        new Complex(lanes[(4 * T.Count) + lane], lanes[(5 * T.Count) + lane]));
}
