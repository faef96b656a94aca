namespace Hornbook.Commands.Reports;

/// <summary>Some of a long list, so that a table fits a screen: the first and the last, evenly spaced, and the middle where that can be.</summary>
internal static class Thinned
{
    /// <summary>At most <paramref name="most"/> of the items; ≥ 2.</summary>
    internal static IReadOnlyList<T> Of<T>(IReadOnlyList<T> items, int most)
    {
        int last = items.Count - 1;
        if (items.Count <= most)
        {
            return items;
        }

        int least = (last + most - 2) / (most - 1);
        int[] steps = [.. Enumerable.Range(least, least + 1)];
        int step = steps.FirstOrDefault(s => last % (2 * s) == 0, steps.FirstOrDefault(s => last % s == 0));
        return step > 0
            ? [.. Enumerable.Range(0, (last / step) + 1).Select(i => items[i * step])]
            : [.. Enumerable.Range(0, most).Select(i => items[(int)Math.Round(i * (double)last / (most - 1))])];
    }
}
