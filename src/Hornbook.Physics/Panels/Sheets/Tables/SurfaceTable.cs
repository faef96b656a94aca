using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Panels.Sheets.Tables;

/// <summary>Several smooth functions of two variables, each from 0 to 1, tabulated on a square of nodes. Immutable.</summary>
internal sealed class SurfaceTable
{
    private readonly int _nodes;
    private readonly int _values;
    private readonly double[] _table;

    /// <summary>Tabulates functions, shared among the cores.</summary>
    /// <param name="nodes">Along each side; ≥ 6.</param>
    /// <param name="values">How many functions; a multiple of four.</param>
    /// <param name="surface">The functions; asked from several threads.</param>
    internal SurfaceTable(int nodes, int values, Surface surface)
    {
        (_nodes, _values) = (nodes, values);
        _table = new double[nodes * nodes * values];
        Parallel.For(0, nodes, row =>
        {
            for (int column = 0; column < nodes; column++)
            {
                surface(row / (nodes - 1.0), column / (nodes - 1.0), _table.AsSpan(((row * nodes) + column) * values, values));
            }
        });
    }

    /// <summary>Fills the values at one place.</summary>
    internal delegate void Surface(double x, double y, Span<double> values);

    /// <summary>Reads all functions at one place.</summary>
    /// <param name="x">From 0 to 1.</param>
    /// <param name="y">From 0 to 1.</param>
    /// <param name="values">Filled.</param>
    internal void Read(double x, double y, Span<double> values)
    {
        int row = SixPoints.Around(x * (_nodes - 1), _nodes, out SixPoints down);
        int column = SixPoints.Around(y * (_nodes - 1), _nodes, out SixPoints right);
        int stride = _nodes * _values;
        ref double start = ref _table[(row * stride) + (column * _values)];
        for (int i = 0; i < _values; i += Vector256<double>.Count)
        {
            Vector256<double> sum = Vector256<double>.Zero;
            for (int k = 0; k < SixPoints.Count; k++)
            {
                Vector256<double> inRow = Vector256<double>.Zero;
                for (int l = 0; l < SixPoints.Count; l++)
                {
                    Vector256<double> node = Vector256.LoadUnsafe(ref start, (nuint)((k * stride) + (l * _values) + i));
                    inRow = Vector256.FusedMultiplyAdd(Vector256.Create(right[l]), node, inRow);
                }

                sum = Vector256.FusedMultiplyAdd(Vector256.Create(down[k]), inRow, sum);
            }

            sum.CopyTo(values[i..]);
        }
    }
}
