namespace Hornbook.Bench.Files;

/// <summary>The nearest right spelling.</summary>
internal static class Spelling
{
    /// <summary>The candidate that a mistyped word most likely means, or null where none is near.</summary>
    internal static string? Nearest(string word, IEnumerable<string> candidates)
    {
        (string Candidate, int Distance)? best = candidates
            .Where(candidate => Math.Abs(candidate.Length - word.Length) <= Allowed(word))
            .Select(candidate => ((string, int)?)(candidate, Distance(Folded(word), Folded(candidate))))
            .MinBy(found => found!.Value.Item2);
        return best is { } found && found.Distance <= Allowed(word) ? found.Candidate : null;
    }

    /// <summary>Letters added, dropped, changed or swapped with a neighbour to get from one word to another.</summary>
    /// <remarks>Optimal string alignment [Damerau1964].</remarks>
    internal static int Distance(string from, string to)
    {
        int[,] steps = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++)
        {
            for (int j = 0; j <= to.Length; j++)
            {
                steps[i, j] = i == 0 || j == 0 ? i + j : Cheapest(steps, from, to, i, j);
            }
        }

        return steps[from.Length, to.Length];
    }

    private static int Cheapest(int[,] steps, string from, string to, int i, int j)
    {
        int changed = steps[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
        int cheapest = Math.Min(changed, Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1);
        bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
        return swapped ? Math.Min(cheapest, steps[i - 2, j - 2] + 1) : cheapest;
    }

    private static int Allowed(string word) => word.Length switch { <= 2 => 1, <= 6 => 2, _ => 3 };

    private static string Folded(string word) => word.ToUpperInvariant().Replace(' ', '_').Replace('-', '_');
}
