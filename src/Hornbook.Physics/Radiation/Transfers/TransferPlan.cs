namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Cuts two bodies into pairs of boxes so that every sample of the one meets every sample of the other in exactly one pair, at the least cost.</summary>
/// <remarks>
/// The costs are those of the parts of the work in docs/performance.md, in nanoseconds on one core of that machine; only their ratios matter. A pair
/// of boxes is left whole when halving the larger one does not pay.
/// </remarks>
internal sealed class TransferPlan
{
    private const double PairCost = 3.0;
    private const double PairCostInFloats = 1.3;
    private const double DirectStart = 300.0;
    private const double CoarseStart = 1500.0;
    private const double SampleCost = 8.0;
    private const double SampleNodeCost = 0.7;
    private const double RowNodeCost = 0.7;
    private const double NodeCost = 15.0;

    // Where summing directly takes less than planning, it is not planned.
    private const double NotWorthACut = 4000.0;

    private readonly SampleTree _first;
    private readonly SampleTree _second;
    private readonly double _wavenumber;
    private readonly double _digits;
    private readonly double _pairCost;
    private readonly List<BoxPair> _pairs = [];

    private TransferPlan(SampleTree first, SampleTree second, double wavenumber, double digits, bool inFloats)
    {
        _first = first;
        _second = second;
        _wavenumber = wavenumber;
        _digits = digits;
        _pairCost = inFloats ? PairCostInFloats : PairCost;
    }

    /// <summary>The pairs, and what one transfer will cost [ns on one core].</summary>
    internal static (BoxPair[] Pairs, double Cost) Of(SampleTree first, SampleTree second, double wavenumber, double digits, bool inFloats = false)
    {
        TransferPlan plan = new(first, second, wavenumber, digits, inFloats);
        double cost = plan.Cut(plan.Best(first.Root, second.Root));
        return ([.. plan._pairs], cost);
    }

    /// <summary>What it would cost to sum every source for every observer [ns on one core].</summary>
    internal static double DirectCost(SampleTree first, SampleTree second, bool inFloats) => new TransferPlan(first, second, 0.0, 0.0, inFloats).DirectCost(first.Root, second.Root);

    private readonly record struct Choice(BoxPair Pair, double Cost);

    /// <summary>Adds the cheapest pairs for two boxes; what they cost.</summary>
    private double Cut(Choice whole)
    {
        if (Halves(whole.Pair) is not (Choice low, Choice high) || (whole.Pair.IsCoarse && low.Cost + high.Cost >= whole.Cost))
        {
            _pairs.Add(whole.Pair);
            return whole.Cost;
        }

        int mark = _pairs.Count;
        double cost = Cut(low) + Cut(high);
        if (cost < whole.Cost)
        {
            return cost;
        }

        _pairs.RemoveRange(mark, _pairs.Count - mark);
        _pairs.Add(whole.Pair);
        return whole.Cost;
    }

    private (Choice Low, Choice High)? Halves(BoxPair pair)
    {
        bool cutFirst = pair.First.Halves is not null && (pair.Second.Halves is null || pair.First.Radius >= pair.Second.Radius);
        if (DirectCost(pair.First, pair.Second) <= NotWorthACut)
        {
            return null;
        }

        return cutFirst && pair.First.Halves is (SampleBox firstLow, SampleBox firstHigh)
            ? (Best(firstLow, pair.Second), Best(firstHigh, pair.Second))
            : pair.Second.Halves is (SampleBox secondLow, SampleBox secondHigh)
                ? (Best(pair.First, secondLow), Best(pair.First, secondHigh))
                : null;
    }

    private Choice Best(SampleBox first, SampleBox second)
    {
        double direct = DirectCost(first, second);
        if (direct > NotWorthACut && BoxView.Grids(first, _first.Axes, second, _second.Axes, _wavenumber, _digits) is (BoxGrid a, BoxGrid b))
        {
            double coarse = CoarseStart + BoxCost(first, a) + BoxCost(second, b) + (_pairCost * a.Count * b.Count);
            if (coarse < direct)
            {
                return new Choice(new BoxPair(first, second, a, b), coarse);
            }
        }

        return new Choice(new BoxPair(first, second, null, null), direct);
    }

    private double DirectCost(SampleBox first, SampleBox second) => DirectStart + (_pairCost * first.Count * second.Count);

    private static double BoxCost(SampleBox box, BoxGrid grid) =>
        (box.Count * (SampleCost + (SampleNodeCost * grid.X)))
        + (RowNodeCost * box.RowCount * grid.Count)
        + (grid.Count * (NodeCost + (RowNodeCost * (grid.X + grid.Y + grid.Z))));
}
