namespace Hornbook.Commands.Reports;

/// <summary>Every so many-th of a long list, the first and the last among them, so that a table fits a screen.</summary>
internal static class Thinned
{
    /// <summary>At most <paramref name="most"/> of the items, evenly chosen.</summary>
    internal static IEnumerable<T> Of<T>(IReadOnlyList<T> items, int most) => items.Count <= most
        ? items
        : Enumerable.Range(0, most).Select(i => items[(int)Math.Round(i * (items.Count - 1.0) / (most - 1))]);
}
