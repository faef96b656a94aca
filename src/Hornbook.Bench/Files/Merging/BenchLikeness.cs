namespace Hornbook.Bench.Files.Merging;

/// <summary>In what two bench files are alike.</summary>
internal static class BenchLikeness
{
    // What a presenter sets between two demonstrations.
    private static readonly HashSet<string> Settings = ["x", "y", "z", "turn", "tilt", "roll", "aside", "antenna", "gain"];

    /// <summary>Alike but for what is shown.</summary>
    internal static bool StandsAs(BenchFile one, BenchFile other) => Values(one, _ => true).SetEquals(Values(other, _ => true));

    /// <summary>Alike but for what is shown and where things stand.</summary>
    internal static bool HasThingsOf(BenchFile one, BenchFile other) => Values(one, IsThing).SetEquals(Values(other, IsThing));

    private static bool IsThing(string key) => !Settings.Contains(key[(key.LastIndexOf('.') + 1)..]);

    private static HashSet<KeyValuePair<string, string>> Values(BenchFile file, Predicate<string> counts)
    {
        ArgumentNullException.ThrowIfNull(file);
        return [.. FlatBench.Of(file).Where(value => !value.Key.StartsWith("demonstrations.", StringComparison.Ordinal) && counts(value.Key))];
    }
}
