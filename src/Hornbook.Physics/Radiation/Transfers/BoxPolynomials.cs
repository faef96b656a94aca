using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Between the samples of a box and products of Chebyshev polynomials in the box, some rows at a time; all six phasors at once in the lanes.</summary>
/// <remarks>Eq. radiation (13). Each of the two is the transpose of the other.</remarks>
internal static class BoxPolynomials<T>
    where T : unmanaged, ILanes<T>
{
    // So many that polynomials of the rows stay in the nearest cache.
    private const int RowsAtOnce = 8;

    private static int RowRoom => ChebyshevRule.Most * SampleTree.RowCount;

    /// <summary>Sums T_i(x) T_j(y) T_k(z) e^{−jkR} times the currents; i runs first.</summary>
    /// <param name="body">The samples.</param>
    /// <param name="box">Which of them.</param>
    /// <param name="grid">How many polynomials.</param>
    /// <param name="currents">Six phasors for each sample of the body, as <see cref="Channels{T}"/>.</param>
    /// <param name="phases">cos kR and sin kR of the samples of the box.</param>
    /// <param name="sums">Filled: six phasors for each product.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Gather(
        SampleTree body, SampleBox box, BoxGrid grid, ReadOnlySpan<double> currents, PhaseSpans phases, Span<double> sums)
    {
        int width = Channels<T>.Width, length = grid.X * width, products = grid.Y * grid.Z;
        using Rented<double> rows = new(RowsAtOnce * length), across = new(RowsAtOnce * products);
        using Rented<double> along = new(RowRoom), turned = new(SampleTree.RowCount * width);
        sums[..(products * length)].Clear();
        for (int some = box.FirstRow; some < box.EndRow; some += RowsAtOnce)
        {
            int count = Math.Min(RowsAtOnce, box.EndRow - some);
            rows.Span.Clear();
            for (int r = 0; r < count; r++)
            {
                int first = body.Rows[some + r], samples = body.Rows[some + r + 1] - first;
                Along(body.Own(0)[first..], samples, box, grid.X, along.Span);
                Across(body, box, grid, first, across.Span.Slice(r * products, products));
                RowPhases<T>.Turn(currents[(first * width)..], phases[(first - box.First)..], samples, turned.Span);
                MatrixView polynomials = new(along.Span, grid.X, samples, SampleTree.RowCount, 1);
                VectorProduct<T>.Add(polynomials, turned.Span, width, rows.Span[(r * length)..], width, width);
            }

            VectorProduct<T>.Add(new MatrixView(across.Span, products, count, 1, products), rows.Span, length, sums, length, length);
        }
    }

    /// <summary>Adds products of polynomials times e^{−jkR} to the fields at the samples of a box.</summary>
    /// <param name="body">The samples.</param>
    /// <param name="box">The box that the polynomials span.</param>
    /// <param name="grid">How many polynomials.</param>
    /// <param name="coefficients">Six phasors for each product.</param>
    /// <param name="part">The box whose samples are meant: the same one or one in it.</param>
    /// <param name="phases">cos kR and sin kR of those samples.</param>
    /// <param name="fields">Added to: six phasors for each of those samples.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Spread(
        SampleTree body, SampleBox box, BoxGrid grid, ReadOnlySpan<double> coefficients, SampleBox part, PhaseSpans phases, Span<double> fields)
    {
        int width = Channels<T>.Width, length = grid.X * width, products = grid.Y * grid.Z;
        using Rented<double> rows = new(RowsAtOnce * length), across = new(RowsAtOnce * products);
        using Rented<double> along = new(RowRoom), smooth = new(SampleTree.RowCount * width);
        for (int some = part.FirstRow; some < part.EndRow; some += RowsAtOnce)
        {
            int count = Math.Min(RowsAtOnce, part.EndRow - some);
            for (int r = 0; r < count; r++)
            {
                Across(body, box, grid, body.Rows[some + r], across.Span.Slice(r * products, products));
            }

            rows.Span.Clear();
            VectorProduct<T>.Add(new MatrixView(across.Span, count, products, products, 1), coefficients, length, rows.Span, length, length);
            for (int r = 0; r < count; r++)
            {
                int first = body.Rows[some + r], samples = body.Rows[some + r + 1] - first;
                Along(body.Own(0)[first..], samples, box, grid.X, along.Span);
                smooth.Span.Clear();
                MatrixView polynomials = new(along.Span, samples, grid.X, 1, SampleTree.RowCount);
                VectorProduct<T>.Add(polynomials, rows.Span[(r * length)..], width, smooth.Span, width, width);
                RowPhases<T>.AddTurned(smooth.Span, phases[(first - part.First)..], samples, fields[((first - part.First) * width)..]);
            }
        }
    }

    /// <summary>T_i(x) of the samples of a row; the sample runs first.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Along(ReadOnlySpan<double> places, int samples, SampleBox box, int count, Span<double> values)
    {
        T centre = T.All(box.OwnCentre.X), perHalf = T.All(Inverse(box.Half.X)), two = T.All(2.0);
        for (int s = 0; s < samples; s += T.Count)
        {
            T x = (T.Load(places[s..]) - centre) * perHalf;
            T before = x, value = T.All(1.0); // T_{−1} = T_1
            for (int i = 0; i < count; i++)
            {
                value.Store(values[((i * SampleTree.RowCount) + s)..]);
                (before, value) = (value, T.MultiplyAdd(two * x, value, -before));
            }
        }
    }

    /// <summary>T_j(y) T_k(z) of a row; j runs first.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Across(SampleTree body, SampleBox box, BoxGrid grid, int sample, Span<double> products)
    {
        Span<double> y = products[..grid.Y];
        Polynomials((body.Own(1)[sample] - box.OwnCentre.Y) * Inverse(box.Half.Y), y);
        if (grid.Z > 1)
        {
            Span<double> z = stackalloc double[ChebyshevRule.Most];
            Polynomials((body.Own(2)[sample] - box.OwnCentre.Z) * Inverse(box.Half.Z), z[..grid.Z]);
            for (int p = grid.Y; p < products.Length; p++)
            {
                products[p] = products[p % grid.Y] * z[p / grid.Y];
            }
        }
    }

    private static double Inverse(double half) => half > 0.0 ? 1.0 / half : 0.0;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Polynomials(double x, Span<double> values)
    {
        double before = x, value = 1.0;
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = value;
            (before, value) = (value, (2.0 * x * value) - before);
        }
    }
}
