using System.Numerics;
using System.Runtime.CompilerServices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Radiation.Lattices;

/// <summary>What a current at one place of a lattice does at every place of another one with the same steps, as plane waves along the lattice. Immutable.</summary>
/// <remarks>E = A J + c × jM/η and jηH = A jM/η + c × J with A = t + p R̂R̂ and the terms of <see cref="GreenTerms{T}"/>; both depend on the way from place to place only.</remarks>
internal sealed class LatticeKernel
{
    // xx, xy, xz, yy, yz and zz of A, then x, y and z of c.
    private const int AlongCount = 6;
    private const int AcrossCount = 3;

    // Real and imaginary parts. In floats: a ten-millionth is good enough, and there are many.
    private const int Numbers = 2 * (AlongCount + AcrossCount);

    private readonly float[] _waves;
    private readonly int _columns;

    private LatticeKernel(float[] waves, int columns) => (_waves, _columns) = (waves, columns);

    /// <summary>Works out the waves.</summary>
    /// <param name="sources">Where currents are.</param>
    /// <param name="observers">Where their field is asked for, counted with the same steps.</param>
    /// <param name="wavenumber">k [1/m].</param>
    internal static LatticeKernel Of<T>(Lattice sources, Lattice observers, double wavenumber)
        where T : unmanaged, ILanes<T>
    {
        int columns = sources.Columns + observers.Columns - 1, rows = sources.Rows + observers.Rows - 1, width = Channels<T>.Width;
        using Rented<double> along = new(rows * columns * width), across = new(rows * columns * width);
        Sample<T>(sources, observers, columns, rows, wavenumber, along.Span, across.Span);
        float[] waves = new float[rows * columns * Numbers];
        FourierSum toRows = FourierSum.ToWaves(rows, rows), toColumns = FourierSum.ToWaves(columns, columns);
        Transform<T>(along.Span, toRows, toColumns, rows, columns, (wave, values) => Keep(values, Channels<T>.Part, AlongCount, waves.AsSpan(wave * Numbers)));
        Transform<T>(across.Span, toRows, toColumns, rows, columns, (wave, values) => Keep(values, Channels<T>.Part, AcrossCount, waves.AsSpan((wave * Numbers) + (2 * AlongCount))));
        return new LatticeKernel(waves, columns);
    }

    /// <summary>Currents to fields, for the waves of one row.</summary>
    /// <param name="row">Which one.</param>
    /// <param name="channels">J and jM/η of each wave of the row; replaced by E and jηH.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Apply<T>(int row, Span<double> channels)
        where T : unmanaged, ILanes<T>
    {
        int width = Channels<T>.Width;
        for (int i = 0; i < _columns; i++)
        {
            ReadOnlySpan<float> k = _waves.AsSpan(((row * _columns) + i) * Numbers, Numbers);
            Span<double> own = channels.Slice(i * width, width);
            (ComplexVector j, ComplexVector m) = Channels<T>.Read(own);
            ComplexVector c = new(At(k, AlongCount), At(k, AlongCount + 1), At(k, AlongCount + 2));
            Channels<T>.Write(Along(k, j) + Cross(c, m), Along(k, m) + Cross(c, j), own);
        }
    }

    private static Complex At(ReadOnlySpan<float> numbers, int i) => new(numbers[2 * i], numbers[(2 * i) + 1]);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static ComplexVector Along(ReadOnlySpan<float> k, in ComplexVector v)
    {
        Complex xy = At(k, 1), xz = At(k, 2), yz = At(k, 4);
        return new(
            (At(k, 0) * v.X) + (xy * v.Y) + (xz * v.Z), (xy * v.X) + (At(k, 3) * v.Y) + (yz * v.Z), (xz * v.X) + (yz * v.Y) + (At(k, 5) * v.Z));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static ComplexVector Cross(in ComplexVector a, in ComplexVector b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    // Ways back, from a later column to an earlier one, are counted from the end.
    private static void Sample<T>(Lattice sources, Lattice observers, int columns, int rows, double wavenumber, Span<double> along, Span<double> across)
        where T : unmanaged, ILanes<T>
    {
        T perWavelength = T.All(wavenumber / (2.0 * Math.PI)), perRadian = T.All(1.0 / wavenumber);
        Span<double> lanes = stackalloc double[3 * T.Count], terms = stackalloc double[9 * T.Count];
        Vector[] ways = new Vector[columns];
        GreenTerms<T> green = default;
        int width = Channels<T>.Width;
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                ways[column] = observers.Place(
                    column < observers.Columns ? column : column - columns, row < observers.Rows ? row : row - rows) - sources.First;
            }

            for (int first = 0; first < columns; first += T.Count)
            {
                VectorLanes<T>.Gather(ways.AsSpan(first), 1.0, lanes);
                green.Set(default, T.Load(lanes), T.Load(lanes[T.Count..]), T.Load(lanes[(2 * T.Count)..]), perWavelength, perRadian);
                VectorLanes<T>.Spread([green.X, green.Y, green.Z, green.DirectReal, green.DirectImaginary, green.RadialReal, green.RadialImaginary, green.CurlReal, green.CurlMinusImaginary], terms);
                for (int i = 0; i < Math.Min(T.Count, columns - first); i++)
                {
                    int at = ((row * columns) + first + i) * width;
                    Write<T>(terms, i, along.Slice(at, width), across.Slice(at, width));
                }
            }
        }
    }

    private static void Write<T>(ReadOnlySpan<double> terms, int lane, Span<double> along, Span<double> across)
        where T : unmanaged, ILanes<T>
    {
        Vector way = new(terms[lane], terms[T.Count + lane], terms[(2 * T.Count) + lane]);
        Complex direct = new(terms[(3 * T.Count) + lane], terms[(4 * T.Count) + lane]);
        Complex radial = new(terms[(5 * T.Count) + lane], terms[(6 * T.Count) + lane]);
        Complex curl = new(terms[(7 * T.Count) + lane], -terms[(8 * T.Count) + lane]);
        Channels<T>.Write(
            new ComplexVector(direct + (radial * (way.X * way.X)), radial * (way.X * way.Y), radial * (way.X * way.Z)),
            new ComplexVector(direct + (radial * (way.Y * way.Y)), radial * (way.Y * way.Z), direct + (radial * (way.Z * way.Z))),
            along);
        Channels<T>.Write(ComplexVector.Along(way, curl), default, across);
    }

    private static void Transform<T>(ReadOnlySpan<double> values, FourierSum toRows, FourierSum toColumns, int rows, int columns, Action<int, ReadOnlySpan<double>> keep)
        where T : unmanaged, ILanes<T>
    {
        int width = Channels<T>.Width, length = columns * width;
        using Rented<double> sums = new(rows * length);
        toRows.Fill<T>(values, length, sums.Span);
        double[] all = sums.Array;
        Parallel.For(0, rows, row =>
        {
            using Rented<double> waves = new(length);
            toColumns.Fill<T>(all.AsSpan(row * length, length), width, waves.Span);
            for (int column = 0; column < columns; column++)
            {
                keep((row * columns) + column, waves.Span.Slice(column * width, width));
            }
        });
    }

    private static void Keep(ReadOnlySpan<double> values, int part, int phasors, Span<float> numbers)
    {
        for (int i = 0; i < phasors; i++)
        {
            numbers[2 * i] = (float)values[i];
            numbers[(2 * i) + 1] = (float)values[part + i];
        }
    }
}
