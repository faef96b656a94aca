using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Between products of polynomials and nodes of a box: one matrix along each axis.</summary>
internal static class GridTransform<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>From sums over polynomials to sums over nodes, in place.</summary>
    internal static void ToNodes(BoxGrid grid, Span<double> values, Span<double> room)
    {
        for (int axis = 0; axis < 3; axis++)
        {
            Along(grid, axis, ChebyshevRule.Of(grid.Along(axis)).ToNodes, values, room);
        }
    }

    /// <summary>From values at nodes to coefficients of polynomials, in place; the transpose of the other.</summary>
    internal static void ToPolynomials(BoxGrid grid, Span<double> values, Span<double> room)
    {
        for (int axis = 0; axis < 3; axis++)
        {
            Along(grid, axis, ChebyshevRule.Of(grid.Along(axis)).ToPolynomials, values, room);
        }
    }

    private static void Along(BoxGrid grid, int axis, ReadOnlySpan<double> matrix, Span<double> values, Span<double> room)
    {
        int count = grid.Along(axis);
        if (count == 1)
        {
            return;
        }

        int stride = Channels<T>.Width * (axis > 0 ? grid.X : 1) * (axis > 1 ? grid.Y : 1);
        values = values[..(grid.Count * Channels<T>.Width)];
        for (int first = 0; first < values.Length; first += count * stride)
        {
            Multiply(matrix, count, values.Slice(first, count * stride), room);
        }
    }

    /// <summary>matrix × lines, the lines one after another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Multiply(ReadOnlySpan<double> matrix, int count, Span<double> lines, Span<double> room)
    {
        int length = lines.Length / count;
        lines.CopyTo(room);
        for (int to = 0; to < count; to++)
        {
            for (int c = 0; c < length; c += T.Count)
            {
                T sum = T.All(0.0);
                for (int from = 0; from < count; from++)
                {
                    sum = T.MultiplyAdd(T.All(matrix[(to * count) + from]), T.Load(room[((from * length) + c)..]), sum);
                }

                sum.Store(lines[((to * length) + c)..]);
            }
        }
    }
}
