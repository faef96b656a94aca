using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>A matrix times a list of long vectors: to_i += Σ_j m_ij from_j, four i and two registers of the vectors at a time.</summary>
/// <remarks>Eight sums in registers, and six loads for eight multiply-adds: one sum at a time would wait for its own last addition.</remarks>
internal static class VectorProduct<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Adds.</summary>
    /// <param name="matrix">The matrix.</param>
    /// <param name="from">As many vectors as it has columns.</param>
    /// <param name="fromStep">Doubles from one of them to the next.</param>
    /// <param name="to">As many vectors as it has rows.</param>
    /// <param name="toStep">Doubles from one of them to the next.</param>
    /// <param name="length">Doubles of each vector; a multiple of two registers.</param>
    internal static void Add(MatrixView matrix, ReadOnlySpan<double> from, int fromStep, Span<double> to, int toStep, int length)
    {
        int i = 0;
        for (; i + 4 <= matrix.Rows; i += 4)
        {
            AddFour(matrix.Numbers[(i * matrix.RowStep)..], matrix, from, fromStep, to[(i * toStep)..], toStep, length);
        }

        for (; i < matrix.Rows; i++)
        {
            AddOne(matrix.Numbers[(i * matrix.RowStep)..], matrix, from, fromStep, to.Slice(i * toStep, length));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddFour(
        ReadOnlySpan<double> numbers, MatrixView matrix, ReadOnlySpan<double> from, int fromStep, Span<double> to, int toStep, int length)
    {
        int columns = matrix.Columns, rowStep = matrix.RowStep, columnStep = matrix.ColumnStep;
        Span<double> to0 = to[..length], to1 = to.Slice(toStep, length), to2 = to.Slice(2 * toStep, length), to3 = to.Slice(3 * toStep, length);
        for (int c = 0; c < length; c += 2 * T.Count)
        {
            T a0 = T.Load(to0[c..]), b0 = T.Load(to0[(c + T.Count)..]), a1 = T.Load(to1[c..]), b1 = T.Load(to1[(c + T.Count)..]);
            T a2 = T.Load(to2[c..]), b2 = T.Load(to2[(c + T.Count)..]), a3 = T.Load(to3[c..]), b3 = T.Load(to3[(c + T.Count)..]);
            int at = 0, vector = c;
            for (int j = 0; j < columns; j++)
            {
                T a = T.Load(from[vector..]), b = T.Load(from[(vector + T.Count)..]);
                T f0 = T.All(numbers[at]), f1 = T.All(numbers[at + rowStep]);
                T f2 = T.All(numbers[at + (2 * rowStep)]), f3 = T.All(numbers[at + (3 * rowStep)]);
                a0 = T.MultiplyAdd(f0, a, a0);
                b0 = T.MultiplyAdd(f0, b, b0);
                a1 = T.MultiplyAdd(f1, a, a1);
                b1 = T.MultiplyAdd(f1, b, b1);
                a2 = T.MultiplyAdd(f2, a, a2);
                b2 = T.MultiplyAdd(f2, b, b2);
                a3 = T.MultiplyAdd(f3, a, a3);
                b3 = T.MultiplyAdd(f3, b, b3);
                at += columnStep;
                vector += fromStep;
            }

            a0.Store(to0[c..]);
            b0.Store(to0[(c + T.Count)..]);
            a1.Store(to1[c..]);
            b1.Store(to1[(c + T.Count)..]);
            a2.Store(to2[c..]);
            b2.Store(to2[(c + T.Count)..]);
            a3.Store(to3[c..]);
            b3.Store(to3[(c + T.Count)..]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddOne(ReadOnlySpan<double> numbers, MatrixView matrix, ReadOnlySpan<double> from, int fromStep, Span<double> to)
    {
        int columns = matrix.Columns, columnStep = matrix.ColumnStep;
        for (int c = 0; c < to.Length; c += 2 * T.Count)
        {
            T a = T.Load(to[c..]), b = T.Load(to[(c + T.Count)..]);
            int at = 0, vector = c;
            for (int j = 0; j < columns; j++)
            {
                T f = T.All(numbers[at]);
                a = T.MultiplyAdd(f, T.Load(from[vector..]), a);
                b = T.MultiplyAdd(f, T.Load(from[(vector + T.Count)..]), b);
                at += columnStep;
                vector += fromStep;
            }

            a.Store(to[c..]);
            b.Store(to[(c + T.Count)..]);
        }
    }
}
