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

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
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
            Span<double> lines = values.Slice(first, count * stride);
            lines.CopyTo(room);
            lines.Clear();
            VectorProduct<T>.Add(new MatrixView(matrix, count, count, count, 1), room, stride, lines, stride, stride);
        }
    }
}
