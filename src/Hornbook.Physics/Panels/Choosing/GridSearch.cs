namespace Hornbook.Physics.Panels.Choosing;

/// <summary>Looks for grids that grant a wish: every period that can be made, each with every width of metal, or so many of them.</summary>
/// <remarks>
/// Nothing is assumed of how leak and loss depend on the sizes: on a board they need not rise and fall evenly. What is between two sizes that were
/// tried is taken to be like them.
/// </remarks>
public static class GridSearch
{
    private const int MostPeriods = 20;
    private const int MostWidths = 40;

    /// <summary>The grids.</summary>
    /// <param name="wish">What is wished.</param>
    /// <param name="make">How they are made.</param>
    /// <param name="progress">Told the share done; null where nobody wants to know.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static GridChoices For(GridWish wish, GridMake make, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(make);
        double[] periods = Spaced(wish.LeastMetal + wish.LeastGap, wish.LongestPeriod, wish.Step, MostPeriods);
        List<GridChoice> found = [];
        GridFigures? nearest = null;
        for (int i = 0; i < periods.Length; i++)
        {
            GridFigures[] tried = [.. Widths(wish, make, periods[i]).AsParallel().AsOrdered().WithCancellation(cancellation)
                .Select(metal => GridFigures.Of(make, periods[i], metal, wish.Frequency))];
            nearest = tried.Append(nearest).OfType<GridFigures>().MinBy(wish.Shortfall);
            found.AddRange(LongestRun(wish, tried));
            progress?.Report((i + 1.0) / periods.Length);
        }

        return new GridChoices([.. found.OrderByDescending(choice => choice.Room).ThenByDescending(choice => choice.Figures.Period)], nearest);
    }

    private static double[] Widths(GridWish wish, GridMake make, double period) => Spaced(
        Math.Max(wish.LeastMetal, make.LeastShare * period), Math.Min(period - wish.LeastGap, make.LargestShare * period), wish.Step, MostWidths);

    /// <summary>The longest run of neighbours that grant the wish, as one choice; none where there is no such run.</summary>
    private static IEnumerable<GridChoice> LongestRun(GridWish wish, GridFigures[] tried)
    {
        (int First, int Count) longest = (0, 0);
        int first = 0;
        for (int i = 0; i < tried.Length; i++)
        {
            first = wish.Shortfall(tried[i]) > 1.0 ? i + 1 : first;
            longest = i + 1 - first > longest.Count ? (first, i + 1 - first) : longest;
        }

        return longest.Count == 0
            ? []
            : [new GridChoice(tried[longest.First + ((longest.Count - 1) / 2)], tried[longest.First].Metal, tried[longest.First + longest.Count - 1].Metal)];
    }

    /// <summary>Whole multiples of a step, both ends included; of very many, about as many as are wanted, evenly spaced.</summary>
    private static double[] Spaced(double from, double to, double step, int most)
    {
        const double Rounding = 1e-9; // 0.3 is not quite three times 0.1
        int first = (int)Math.Ceiling((from / step) - Rounding), last = (int)Math.Floor((to / step) + Rounding);
        int stride = Math.Max(1, (last - first + most) / most);
        return [.. Enumerable.Range(0, Math.Max(0, ((last - first) / stride) + 1)).Select(i => Math.Round((first + (i * stride)) * step, 9))];
    }
}
