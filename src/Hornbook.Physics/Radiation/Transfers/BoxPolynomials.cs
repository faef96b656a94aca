using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Between the samples of a box and products of Chebyshev polynomials in the box, row by row; all six phasors at once in the lanes.</summary>
/// <remarks>Eq. radiation (13). Each of the two is the transpose of the other.</remarks>
internal static class BoxPolynomials<T>
    where T : unmanaged, ILanes<T>
{
    /// <summary>Sums T_i(x) T_j(y) T_k(z) e^{−jkR} times the currents; i runs first.</summary>
    /// <param name="body">The samples.</param>
    /// <param name="box">Which of them.</param>
    /// <param name="grid">How many polynomials.</param>
    /// <param name="currents">Six phasors for each sample of the body, as <see cref="Channels{T}"/>.</param>
    /// <param name="phases">cos kR and sin kR of the samples of the box.</param>
    /// <param name="sums">Filled: six phasors for each product.</param>
    internal static void Gather(
        SampleTree body, SampleBox box, BoxGrid grid, ReadOnlySpan<double> currents, PhaseSpans phases, Span<double> sums)
    {
        int width = Channels<T>.Width;
        Span<double> row = stackalloc double[ChebyshevRule.Most * width];
        Span<double> across = stackalloc double[ChebyshevRule.Most * ChebyshevRule.Most];
        sums = sums[..(grid.Count * width)];
        sums.Clear();
        row = row[..(grid.X * width)];
        for (int r = box.FirstRow; r < box.FirstRow + box.RowCount; r++)
        {
            int first = body.Rows[r], count = body.Rows[r + 1] - first;
            row.Clear();
            GatherRow(body.Own(0).Slice(first, count), box.OwnCentre.X, box.Half.X, currents[(first * width)..], phases[(first - box.First)..], row);
            Across(body, box, grid, first, across);
            for (int p = 0; p < grid.Y * grid.Z; p++)
            {
                AddScaled(row, across[p], sums.Slice(p * row.Length, row.Length));
            }
        }
    }

    /// <summary>Adds products of polynomials times e^{−jkR} to the fields at the samples of some rows.</summary>
    /// <param name="body">The samples.</param>
    /// <param name="box">The box that the polynomials span.</param>
    /// <param name="grid">How many polynomials.</param>
    /// <param name="coefficients">Six phasors for each product.</param>
    /// <param name="part">The box in it, or around it, whose samples are meant.</param>
    /// <param name="phases">cos kR and sin kR of those samples.</param>
    /// <param name="fields">Added to: six phasors for each of those samples.</param>
    internal static void Spread(
        SampleTree body, SampleBox box, BoxGrid grid, ReadOnlySpan<double> coefficients, SampleBox part, PhaseSpans phases, Span<double> fields)
    {
        int width = Channels<T>.Width;
        Span<double> row = stackalloc double[ChebyshevRule.Most * width];
        Span<double> across = stackalloc double[ChebyshevRule.Most * ChebyshevRule.Most];
        row = row[..(grid.X * width)];
        for (int r = part.FirstRow; r < part.FirstRow + part.RowCount; r++)
        {
            int first = body.Rows[r], count = body.Rows[r + 1] - first;
            row.Clear();
            Across(body, box, grid, first, across);
            for (int p = 0; p < grid.Y * grid.Z; p++)
            {
                AddScaled(coefficients.Slice(p * row.Length, row.Length), across[p], row);
            }

            int at = first - part.First;
            SpreadRow(body.Own(0).Slice(first, count), box.OwnCentre.X, box.Half.X, row, phases[at..], fields[(at * width)..]);
        }
    }

    /// <summary>T_j(y) T_k(z) of a row; j runs first.</summary>
    private static void Across(SampleTree body, SampleBox box, BoxGrid grid, int sample, Span<double> products)
    {
        Span<double> y = stackalloc double[ChebyshevRule.Most], z = stackalloc double[ChebyshevRule.Most];
        Polynomials(body.Own(1)[sample], box.OwnCentre.Y, box.Half.Y, y[..grid.Y]);
        Polynomials(body.Own(2)[sample], box.OwnCentre.Z, box.Half.Z, z[..grid.Z]);
        for (int k = 0; k < grid.Z; k++)
        {
            for (int j = 0; j < grid.Y; j++)
            {
                products[(k * grid.Y) + j] = z[k] * y[j];
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Polynomials(double place, double centre, double half, Span<double> values)
    {
        double x = half > 0.0 ? (place - centre) / half : 0.0;
        double before = x, value = 1.0; // T_{−1} = T_1
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = value;
            (before, value) = (value, (2.0 * x * value) - before);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddScaled(ReadOnlySpan<double> from, double factor, Span<double> to)
    {
        T f = T.All(factor);
        for (int i = 0; i < from.Length; i += T.Count)
        {
            T.MultiplyAdd(f, T.Load(from[i..]), T.Load(to[i..])).Store(to[i..]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void GatherRow(
        ReadOnlySpan<double> places, double centre, double half, ReadOnlySpan<double> currents, PhaseSpans phases, Span<double> row)
    {
        Span<double> polynomials = stackalloc double[ChebyshevRule.Most];
        int width = Channels<T>.Width, part = Channels<T>.Part, count = row.Length / width;
        for (int s = 0; s < places.Length; s++)
        {
            Polynomials(places[s], centre, half, polynomials[..count]);
            T cos = T.All(phases.Cos[s]), sin = T.All(phases.Sin[s]);
            for (int c = 0; c < part; c += T.Count)
            {
                T real = T.Load(currents[((s * width) + c)..]), imaginary = T.Load(currents[((s * width) + part + c)..]);
                T r = T.MultiplyAdd(real, cos, imaginary * sin);
                T i = T.MultiplyAdd(imaginary, cos, -(real * sin));
                for (int p = 0; p < count; p++)
                {
                    T t = T.All(polynomials[p]);
                    Span<double> sumReal = row[((p * width) + c)..], sumImaginary = row[((p * width) + part + c)..];
                    T.MultiplyAdd(t, r, T.Load(sumReal)).Store(sumReal);
                    T.MultiplyAdd(t, i, T.Load(sumImaginary)).Store(sumImaginary);
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void SpreadRow(
        ReadOnlySpan<double> places, double centre, double half, ReadOnlySpan<double> row, PhaseSpans phases, Span<double> fields)
    {
        Span<double> polynomials = stackalloc double[ChebyshevRule.Most];
        int width = Channels<T>.Width, part = Channels<T>.Part, count = row.Length / width;
        for (int s = 0; s < places.Length; s++)
        {
            Polynomials(places[s], centre, half, polynomials[..count]);
            T cos = T.All(phases.Cos[s]), sin = T.All(phases.Sin[s]);
            for (int c = 0; c < part; c += T.Count)
            {
                T r = T.All(0.0), i = T.All(0.0);
                for (int p = 0; p < count; p++)
                {
                    T t = T.All(polynomials[p]);
                    r = T.MultiplyAdd(t, T.Load(row[((p * width) + c)..]), r);
                    i = T.MultiplyAdd(t, T.Load(row[((p * width) + part + c)..]), i);
                }

                Span<double> real = fields[((s * width) + c)..], imaginary = fields[((s * width) + part + c)..];
                T.MultiplyAdd(r, cos, T.MultiplyAdd(i, sin, T.Load(real))).Store(real);
                T.MultiplyAdd(i, cos, T.MultiplyAdd(-r, sin, T.Load(imaginary))).Store(imaginary);
            }
        }
    }
}
