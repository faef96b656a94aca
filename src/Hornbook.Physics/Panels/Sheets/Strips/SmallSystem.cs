using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>Linear equations of a few unknowns, solved in place; the library's solver allocates, and this is asked for at every point of a panel.</summary>
internal static class SmallSystem
{
    /// <summary>Gauss's elimination with the largest pivot of each column.</summary>
    /// <param name="system">Row by row, the unknowns' coefficients and then the right-hand sides, which become the solutions.</param>
    /// <param name="size">Unknowns.</param>
    /// <param name="sides">Right-hand sides.</param>
    internal static void Solve(Span<Complex> system, int size, int sides)
    {
        int columns = size + sides;
        for (int k = 0; k < size; k++)
        {
            Exchange(system, columns, k, Pivot(system, size, columns, k));
            Span<Complex> pivotRow = system.Slice(k * columns, columns);
            Complex inverse = Complex.Reciprocal(pivotRow[k]);
            for (int j = k + 1; j < columns; j++)
            {
                pivotRow[j] *= inverse;
            }

            for (int i = 0; i < size; i++)
            {
                if (i != k)
                {
                    Subtract(system.Slice(i * columns, columns), pivotRow, k);
                }
            }
        }
    }

    private static int Pivot(ReadOnlySpan<Complex> system, int size, int columns, int k)
    {
        int best = k;
        double largest = 0.0;
        for (int i = k; i < size; i++)
        {
            Complex candidate = system[(i * columns) + k];
            double magnitude = Math.Abs(candidate.Real) + Math.Abs(candidate.Imaginary);
            (best, largest) = magnitude > largest ? (i, magnitude) : (best, largest);
        }

        return best;
    }

    private static void Exchange(Span<Complex> system, int columns, int a, int b)
    {
        if (a == b)
        {
            return;
        }

        for (int j = 0; j < columns; j++)
        {
            (system[(a * columns) + j], system[(b * columns) + j]) = (system[(b * columns) + j], system[(a * columns) + j]);
        }
    }

    private static void Subtract(Span<Complex> row, ReadOnlySpan<Complex> pivotRow, int k)
    {
        Complex factor = row[k];
        for (int j = k + 1; j < row.Length; j++)
        {
            row[j] -= factor * pivotRow[j];
        }
    }
}
