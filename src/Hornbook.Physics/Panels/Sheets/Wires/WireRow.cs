using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Strips;
using MathNet.Numerics.LinearAlgebra;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>What wires do to the waves that may travel, as one row of a table: a triangle for each kind of field.</summary>
/// <remarks>
/// Of the even electric field the current and the field of order 0 are changed over, because wires that are a third of the period thick have a pole there. Eq. wire-grids (11).
/// </remarks>
/// <param name="waves">How many; odd, order 0 in the middle.</param>
internal sealed class WireRow(int waves)
{
    private readonly int _triangle = waves * (waves + 1) / 2;
    private readonly int _zero = waves / 2;

    /// <summary>Numbers in a row; a multiple of four.</summary>
    internal int Length => 4 * _triangle;

    /// <summary>Writes a row.</summary>
    /// <param name="kinds">The exchange of each kind of field.</param>
    /// <param name="row">Filled.</param>
    internal void Pack(Matrix<double>[] kinds, Span<double> row)
    {
        int at = 0;
        for (int kind = 0; kind < kinds.Length; kind++)
        {
            for (int i = 0; i < waves; i++)
            {
                for (int j = 0; j <= i; j++)
                {
                    row[at++] = (WireField)kind == WireField.ElectricEven ? ChangedOver(kinds[kind], i, j) : kinds[kind][i, j];
                }
            }
        }
    }

    /// <summary>How much of a wave of order 0 one kind of field leaves as it was: 1 without wires, 0 where it is turned round.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="row">The row.</param>
    /// <param name="travelling">The waves.</param>
    internal Complex Left(WireField kind, ReadOnlySpan<double> row, in RowWaves travelling)
    {
        ReadOnlySpan<double> y = row.Slice((int)kind * _triangle, _triangle);
        return waves == 1 ? OfOne(kind, y[0], travelling.Normals[0].Real) : OfSeveral(kind, y, travelling);
    }

    // Eq. wire-grids (10).
    private static Complex OfOne(WireField kind, double y, double normal)
    {
        (double real, double imaginary) = kind switch
        {
            WireField.ElectricEven => (Math.PI * y * normal, 1.0),
            WireField.MagneticEven => (Math.PI * normal, y),
            _ => (1.0, y * normal / Math.PI),
        };
        double share = real / ((real * real) + (imaginary * imaginary));
        return new Complex(real * share, -imaginary * share);
    }

    private Complex OfSeveral(WireField kind, ReadOnlySpan<double> y, in RowWaves travelling)
    {
        int columns = waves + 1;
        Span<Complex> system = stackalloc Complex[waves * columns];
        for (int i = 0; i < waves; i++)
        {
            (Complex own, Complex others) = Weights(kind, i, travelling);
            for (int j = 0; j < waves; j++)
            {
                double element = i >= j ? y[(i * (i + 1) / 2) + j] : y[(j * (j + 1) / 2) + i];
                system[(i * columns) + j] = (others * element) + (i == j ? own : Complex.Zero);
            }

            system[(i * columns) + waves] = i != _zero ? Complex.Zero : kind == WireField.MagneticEven ? own : Complex.One;
        }

        if (kind == WireField.ElectricEven)
        {
            ChangeOver(system, travelling.Normals[_zero].Real, y[(_zero * (_zero + 1) / 2) + _zero]);
        }

        SmallSystem.Solve(system, waves, 1);
        Complex answer = system[(_zero * columns) + waves];
        return kind == WireField.ElectricEven ? 1.0 - (Complex.ImaginaryOne * answer) : answer;
    }

    // Of the wave itself and of what the others bring, times what would be infinite where it grazes.
    private (Complex Own, Complex Others) Weights(WireField kind, int wave, in RowWaves travelling)
    {
        Complex normal = travelling.Normals[wave], turned = Complex.ImaginaryOne * normal;
        bool isEven = kind is WireField.ElectricEven or WireField.MagneticEven;
        if (wave == _zero)
        {
            return isEven ? (Math.PI * normal, Complex.ImaginaryOne) : (Complex.One, turned / Math.PI);
        }

        double quiet = travelling.Quiet[wave];
        Complex instead = (quiet - turned) / Math.PI;
        return isEven ? (normal * quiet, Complex.ImaginaryOne * instead) : (Complex.One, turned * instead / quiet);
    }

    // The unknown of order 0 is its current over πk_z.
    private void ChangeOver(Span<Complex> system, double normal, double own)
    {
        int columns = waves + 1;
        for (int wave = 0; wave < waves; wave++)
        {
            ref Complex inRow = ref system[(_zero * columns) + wave];
            inRow = wave == _zero ? (Math.PI * normal * own) + Complex.ImaginaryOne : Complex.ImaginaryOne * inRow;
            system[(wave * columns) + _zero] *= wave == _zero ? Complex.One : Math.PI * normal;
        }
    }

    private double ChangedOver(Matrix<double> y, int i, int j)
    {
        double pivot = y[_zero, _zero];
        if (i == _zero || j == _zero)
        {
            return i == j ? 1.0 / pivot : y[i, j] / pivot;
        }

        return y[i, j] - (y[i, _zero] * y[_zero, j] / pivot);
    }
}
