using System.Runtime.CompilerServices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Radiation.Lattices;

/// <summary>A discrete Fourier transform of whole rows of phasors, as a product with its matrix. Immutable.</summary>
/// <remarks>
/// Of some hundred places, with six phasors that lie together in registers, the product takes no longer than a fast transform of each phasor would, and any number of places is as good as a
/// power of two. Cosines are the same and sines opposite for i and n − i: where all n are given or asked for, half of them do.
/// </remarks>
internal sealed class FourierSum
{
    private readonly int _from;
    private readonly int _to;
    private readonly int _period;
    private readonly double[] _cosines;
    private readonly double[] _sines;

    private FourierSum(int from, int to, int period, int sign)
    {
        (_from, _to, _period) = (from, to, period);
        _cosines = new double[Half(to) * Half(from)];
        _sines = new double[_cosines.Length];
        (double Sin, double Cos)[] turns = [.. Enumerable.Range(0, period).Select(turn => Math.SinCos(2.0 * Math.PI * turn / period))];
        for (int i = 0; i < Half(to); i++)
        {
            for (int j = 0; j < Half(from); j++)
            {
                (double sin, double cos) = turns[(long)i * j % period];
                _cosines[(i * Half(from)) + j] = cos;
                _sines[(i * Half(from)) + j] = -sign * sin;
            }
        }
    }

    /// <summary>Σ_j e^{−2πj·ij/n} of values at the first few of n places, or at all, for all n waves.</summary>
    internal static FourierSum ToWaves(int places, int waves) => new(places, waves, waves, -1);

    /// <summary>Σ_i e^{+2πj·ij/n} of n waves, at the first few of n places.</summary>
    internal static FourierSum ToPlaces(int waves, int places) => new(waves, places, waves, 1);

    /// <summary>Sums.</summary>
    /// <param name="rows">What is summed, one row after the other.</param>
    /// <param name="length">Doubles of a row: whole <see cref="Channels{T}"/>.</param>
    /// <param name="sums">Filled: one row after the other.</param>
    internal void Fill<T>(ReadOnlySpan<double> rows, int length, Span<double> sums)
        where T : unmanaged, ILanes<T>
    {
        int from = Half(_from), to = Half(_to);
        using Rented<double> even = new(from * length), odd = new(from * length), turned = new(to * length);
        Fold<T>(rows, length, even.Span, odd.Span);
        Span<double> straight = sums[..(to * length)];
        straight.Clear();
        turned.Span.Clear();
        VectorProduct<T>.Add(new MatrixView(_cosines, to, from, from, 1), even.Span, length, straight, length, length);
        VectorProduct<T>.Add(new MatrixView(_sines, to, from, from, 1), odd.Span, length, turned.Span, length, length);
        Unfold<T>(sums, length, turned.Span);
    }

    // Of all n, those up to the middle.
    private int Half(int count) => count == _period ? (count / 2) + 1 : count;

    // The one of which i is the mirror image, where both are there and differ.
    private int? Twin(int i, int count) => count == _period && i > 0 && 2 * i < _period ? _period - i : null;

    /// <summary>What cosines are for, and what sines are for, times −j: with that real numbers do for the matrix.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Fold<T>(ReadOnlySpan<double> rows, int length, Span<double> even, Span<double> odd)
        where T : unmanaged, ILanes<T>
    {
        int part = Channels<T>.Part;
        for (int i = 0; i < Half(_from); i++)
        {
            int at = i * length;
            int? twin = Twin(i, _from) * length;
            for (int c = 0; c < length; c += T.Count)
            {
                int opposite = c / part % 2 == 0 ? c + part : c - part;
                T value = T.Load(rows[(at + c)..]);
                T sum = value, difference = value;
                if (twin is { } other)
                {
                    T image = T.Load(rows[(other + c)..]);
                    (sum, difference) = (value + image, value - image);
                }

                sum.Store(even[(at + c)..]);
                (opposite > c ? -difference : difference).Store(odd[(at + opposite)..]);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Unfold<T>(Span<double> sums, int length, ReadOnlySpan<double> turned)
        where T : unmanaged, ILanes<T>
    {
        for (int i = 0; i < Half(_to); i++)
        {
            int at = i * length;
            int? twin = Twin(i, _to) * length;
            for (int c = 0; c < length; c += T.Count)
            {
                T straight = T.Load(sums[(at + c)..]), own = T.Load(turned[(at + c)..]);
                (straight + own).Store(sums[(at + c)..]);
                if (twin is { } other)
                {
                    (straight - own).Store(sums[(other + c)..]);
                }
            }
        }
    }
}
