using System.Runtime.Intrinsics;

namespace Hornbook.Physics.Panels.Sheets.Tables;

/// <summary>Several smooth functions of one variable from 0 to 1, tabulated until the error between the nodes is small. Immutable.</summary>
internal sealed class CurveTable
{
    private const int FewestNodes = 17;
    private const int MostNodes = 16385;

    private readonly int _nodes;
    private readonly int _values;
    private readonly double[] _table;

    private CurveTable(int nodes, int values, double[] table) => (_nodes, _values, _table) = (nodes, values, table);

    /// <summary>Fills the values at one place.</summary>
    internal delegate void Curve(double x, Span<double> values);

    /// <summary>Tabulates functions.</summary>
    /// <param name="values">How many; a multiple of four.</param>
    /// <param name="curve">The functions.</param>
    /// <param name="tolerance">Largest error half way between nodes, over the largest value of the same function.</param>
    /// <remarks>Functions that need more than 16385 nodes get these; they swing more than eight hundred times.</remarks>
    internal static CurveTable Of(int values, Curve curve, double tolerance)
    {
        CurveTable table = new(FewestNodes, values, Sampled(FewestNodes, values, curve));
        while (table._nodes < MostNodes)
        {
            CurveTable finer = table.Refined(curve);
            if (table.Error(finer) <= tolerance)
            {
                return finer;
            }

            table = finer;
        }

        return table;
    }

    /// <summary>Reads all functions at one place.</summary>
    /// <param name="x">From 0 to 1.</param>
    /// <param name="values">Filled.</param>
    internal void Read(double x, Span<double> values)
    {
        int first = SixPoints.Around(x * (_nodes - 1), _nodes, out SixPoints weights);
        ref double start = ref _table[first * _values];
        for (int i = 0; i < _values; i += Vector256<double>.Count)
        {
            Vector256<double> sum = Vector256<double>.Zero;
            for (int k = 0; k < SixPoints.Count; k++)
            {
                Vector256<double> node = Vector256.LoadUnsafe(ref start, (nuint)((k * _values) + i));
                sum = Vector256.FusedMultiplyAdd(Vector256.Create(weights[k]), node, sum);
            }

            sum.CopyTo(values[i..]);
        }
    }

    private static double[] Sampled(int nodes, int values, Curve curve)
    {
        double[] table = new double[nodes * values];
        for (int i = 0; i < nodes; i++)
        {
            curve(i / (nodes - 1.0), table.AsSpan(i * values, values));
        }

        return table;
    }

    // Every second node is known already.
    private CurveTable Refined(Curve curve)
    {
        int nodes = (2 * _nodes) - 1;
        double[] table = new double[nodes * _values];
        for (int i = 0; i < nodes; i++)
        {
            Span<double> row = table.AsSpan(i * _values, _values);
            if (i % 2 == 0)
            {
                _table.AsSpan(i / 2 * _values, _values).CopyTo(row);
            }
            else
            {
                curve(i / (nodes - 1.0), row);
            }
        }

        return new CurveTable(nodes, _values, table);
    }

    private double Error(CurveTable finer)
    {
        double[] read = new double[_values], off = new double[_values], largest = new double[_values];
        for (int i = 0; i < finer._nodes; i++)
        {
            Read(i / (finer._nodes - 1.0), read);
            for (int n = 0; n < _values; n++)
            {
                double exact = finer._table[(i * _values) + n];
                off[n] = Math.Max(off[n], Math.Abs(read[n] - exact));
                largest[n] = Math.Max(largest[n], Math.Abs(exact));
            }
        }

        return off.Zip(largest, (error, size) => size > 0.0 ? error / size : 0.0).Max();
    }
}
