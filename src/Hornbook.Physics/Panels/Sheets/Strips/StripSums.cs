namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>The infinite sums of Galerkin's equations over the orders of a grid, turned into short ones.</summary>
/// <remarks>
/// From order M on, the impedance times or over the order is a smooth function of 1/m, so a polynomial through a few places m, whole or not, carries it; the
/// sums over products of transforms times that polynomial depend on w/p only. Each place then counts as one more order. Eq. strip-grids (6) and (7).
/// </remarks>
internal sealed class StripSums
{
    private const int Places = 10;

    private readonly StripFunctions _functions;
    private readonly int _size;
    private readonly double[] _acrossAcross;
    private readonly double[] _acrossAlong;
    private readonly double[] _alongAlong;

    /// <summary>Makes the sums over orders above some.</summary>
    /// <param name="functions">The transforms.</param>
    /// <param name="above">Orders up to this one, on both sides, are left out.</param>
    /// <param name="from">The order from which on the polynomial carries; &gt; above.</param>
    internal StripSums(StripFunctions functions, int above, int from)
    {
        _functions = functions;
        _size = functions.Count * functions.Count;
        int single = from - above - 1;
        Orders = [.. Enumerable.Range(above + 1, single), .. ChebyshevPlaces(from)];
        _acrossAcross = new double[Orders.Length * _size];
        _acrossAlong = new double[Orders.Length * _size];
        _alongAlong = new double[Orders.Length * _size];
        for (int i = 0; i < single; i++)
        {
            Add(i, above + 1 + i, 1.0, 1.0, 1.0);
        }

        AddCarried(single, from);
        AddEnd(single);
    }

    /// <summary>The orders m that stand for all: to be counted as m and as −m.</summary>
    internal double[] Orders { get; }

    /// <summary>Products of two transforms across, row by row, for one of the orders.</summary>
    internal ReadOnlySpan<double> AcrossAcross(int index) => _acrossAcross.AsSpan(index * _size, _size);

    /// <summary>Products of a transform across (row) and one along (column).</summary>
    internal ReadOnlySpan<double> AcrossAlong(int index) => _acrossAlong.AsSpan(index * _size, _size);

    /// <summary>Products of two transforms along.</summary>
    internal ReadOnlySpan<double> AlongAlong(int index) => _alongAlong.AsSpan(index * _size, _size);

    // 1/m at Chebyshev's places between 0 and 1/from.
    private static IEnumerable<double> ChebyshevPlaces(int first) =>
        from n in Enumerable.Range(0, Places) select 2.0 * first / (1.0 + Math.Cos((n + 0.5) * Math.PI / Places));

    private void Add(int index, int order, double acrossAcross, double acrossAlong, double alongAlong)
    {
        ReadOnlySpan<double> across = _functions.Across(order), along = _functions.Along(order);
        int at = index * _size;
        for (int i = 0; i < across.Length; i++)
        {
            double uu = acrossAcross * across[i], uv = acrossAlong * across[i], vv = alongAlong * along[i];
            for (int j = 0; j < across.Length; j++, at++)
            {
                _acrossAcross[at] += uu * across[j];
                _acrossAlong[at] += uv * along[j];
                _alongAlong[at] += vv * along[j];
            }
        }
    }

    // Z across grows as m, Z along falls as 1/m: the polynomial carries what is left.
    private void AddCarried(int single, int from)
    {
        Parallel.For(0, Places, n =>
        {
            double place = Orders[single + n];
            for (int m = from; m <= _functions.Orders; m++)
            {
                double counts = Carried(single, n, 1.0 / m), ratio = m / place;
                Add(single + n, m, counts * ratio, counts, counts / ratio);
            }
        });
    }

    // Lagrange's polynomial in 1/m that is 1 at the nth place and 0 at the others.
    private double Carried(int single, int n, double inverse)
    {
        double product = 1.0, own = 1.0 / Orders[single + n];
        for (int k = single; k < single + Places; k++)
        {
            double other = 1.0 / Orders[k];
            product *= k == single + n ? 1.0 : (inverse - other) / (own - other);
        }

        return product;
    }

    // Beyond the last order products of two Bessel functions are a mean and a beat, both over q, Eq. strip-grids (7).
    private void AddEnd(int single)
    {
        double share = _functions.Share, last = 1.0 / (_functions.Orders + 0.5);
        double beat = 2.0 * Math.PI * share;
        for (int n = 0; n < Places; n++)
        {
            double place = Orders[single + n];
            double mean = MathNet.Numerics.Integration.GaussLegendreRule.Integrate(x => Carried(single, n, x), 0.0, last, 8);
            double atLast = Carried(single, n, last) * last * last / (2.0 * Math.Sin(0.5 * beat));
            double Rest(int a, int b)
            {
                double phase = (beat / last) - ((a + b + 1) * 0.5 * Math.PI);
                double sameTurn = (a - b) % 2 == 0 ? ((a - b) % 4 == 0 ? mean : -mean) : 0.0;
                return sameTurn - (atLast * Math.Sin(phase));
            }

            AddEnd((single + n) * _size, place, Rest);
        }
    }

    private void AddEnd(int at, double place, Func<int, int, double> rest)
    {
        // (π² w/2p) times 1/(π q m) for currents along, with (i+1)/q for each current across.
        double share = _functions.Share, alongAlong = 0.5, overArgument = 1.0 / (Math.PI * share);
        int count = _functions.Count;
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++, at++)
            {
                _alongAlong[at] += alongAlong * place * rest(i, j);
                _acrossAlong[at] += alongAlong * (i + 1) * overArgument * rest(i + 1, j);
                _acrossAcross[at] += alongAlong * (i + 1) * (j + 1) * overArgument * overArgument / place * rest(i + 1, j + 1);
            }
        }
    }
}
