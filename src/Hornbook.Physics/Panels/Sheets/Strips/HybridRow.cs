using System.Numerics;
using System.Runtime.InteropServices;
using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>What the waves of a grid do to each other as one row of a table: the admittance with the field and the current along the strips of order 0 changed over.</summary>
/// <remarks>
/// A wave that follows the strips finds a current without a field, a pole of the admittance at or just beyond grazing; changed over, nothing is infinite. Eq. strip-grids (8).
/// The row is symmetric: a triangle of currents across, one of currents along, and all that is mixed, without its factor k_v/k.
/// </remarks>
/// <param name="waves">How many; odd, order 0 in the middle.</param>
internal sealed class HybridRow(int waves)
{
    /// <summary>Numbers in a row; a multiple of four.</summary>
    internal int Length { get; } = ((2 * waves * ((2 * waves) + 1)) + 3) / 4 * 4;

    /// <summary>Writes a row.</summary>
    /// <param name="y">Currents across of all waves, then along; currents along for fields across lack their factor.</param>
    /// <param name="squaredAlong">(k_v/k)².</param>
    /// <param name="numbers">Filled.</param>
    internal void Pack(Matrix<Complex> y, double squaredAlong, Span<double> numbers)
    {
        Span<Complex> row = MemoryMarshal.Cast<double, Complex>(numbers);
        int at = 0;
        for (int i = 0; i < 2 * waves; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                row[at++] = ChangedOver(y, i, j, squaredAlong);
            }
        }
    }

    /// <summary>Reads a row.</summary>
    /// <param name="numbers">The row.</param>
    /// <param name="v">k_v/k.</param>
    /// <param name="elements">Filled, row by row.</param>
    internal void Unpack(ReadOnlySpan<double> numbers, double v, Span<Complex> elements)
    {
        ReadOnlySpan<Complex> row = MemoryMarshal.Cast<double, Complex>(numbers);
        int size = 2 * waves, at = 0;
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++, at++)
            {
                Complex element = IsMixed(i, j) ? v * row[at] : row[at];
                elements[(i * size) + j] = elements[(j * size) + i] = element;
            }
        }
    }

    // One step of Gauss and Jordan on the element k, k.
    private Complex ChangedOver(Matrix<Complex> y, int i, int j, double squaredAlong)
    {
        int k = waves + (waves / 2);
        Complex pivot = y[k, k];
        if (i == k || j == k)
        {
            return i == j ? 1.0 / pivot : Lower(y, i, j) / pivot;
        }

        double factor = IsMixed(i, k) && IsMixed(j, k) ? squaredAlong : 1.0;
        return Lower(y, i, j) - (factor * Lower(y, i, k) * Lower(y, j, k) / pivot);
    }

    // The currents along for a field across lack a factor k_v/k; the other way round it would be one too many.
    private static Complex Lower(Matrix<Complex> y, int i, int j) => i > j ? y[i, j] : y[j, i];

    private bool IsMixed(int i, int j) => (i < waves) != (j < waves);
}
