using Hornbook.Bench.Files.Editing;

namespace Hornbook.Bench.Files.Merging;

/// <summary>Two versions of a bench file that come from one, joined key by key.</summary>
/// <remarks>
/// The text is theirs, comments and all, with our changed values put in. Whatever cannot be put in one by one (a table of ours that is
/// new or gone) makes the whole not joinable: it is then for a person to choose.
/// </remarks>
public sealed class BenchMerge
{
    private BenchMerge(IReadOnlyList<MergeConflict> conflicts, BenchFile? withOurs, BenchFile? withTheirs)
    {
        Conflicts = conflicts;
        WithOurs = withOurs;
        WithTheirs = withTheirs;
    }

    /// <summary>Keys that both changed, each to something else; in the order of their names.</summary>
    public IReadOnlyList<MergeConflict> Conflicts { get; }

    /// <summary>Both sides' changes, ours where they conflict; null where they cannot be joined.</summary>
    public BenchFile? WithOurs { get; }

    /// <summary>Both sides' changes, theirs where they conflict; null where they cannot be joined.</summary>
    public BenchFile? WithTheirs { get; }

    /// <summary>Both sides' changes; null where a person has to choose.</summary>
    public BenchFile? Joined => Conflicts.Count == 0 ? WithOurs : null;

    /// <summary>Joins two versions.</summary>
    /// <param name="origin">What both come from; usable.</param>
    /// <param name="ours">Our version; usable.</param>
    /// <param name="theirs">The other version, whose text is built on; usable.</param>
    /// <exception cref="InvalidOperationException">One of them is not usable.</exception>
    public static BenchMerge Of(BenchFile origin, BenchFile ours, BenchFile theirs)
    {
        ArgumentNullException.ThrowIfNull(origin);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        IReadOnlyDictionary<string, string> before = Values(origin), mine = Values(ours), other = Values(theirs);
        string[] changed = [.. Changed(before, mine).Where(key => Found(mine, key) != Found(other, key))];
        string[] both = [.. changed.Intersect(Changed(before, other)).Order(StringComparer.Ordinal)];
        return new BenchMerge(
            [.. both.Select(key => new MergeConflict(key, Found(mine, key), Found(other, key)))],
            Put(theirs, changed, mine),
            Put(theirs, changed.Except(both), mine));
    }

    private static IReadOnlyDictionary<string, string> Values(BenchFile file) => file.IsUsable
        ? FlatBench.Of(file)
        : throw new InvalidOperationException($"{file.Name} has {file.Problems.Count} problems; only usable files are joined");

    private static IEnumerable<string> Changed(IReadOnlyDictionary<string, string> from, IReadOnlyDictionary<string, string> to) =>
        from.Keys.Union(to.Keys).Where(key => Found(from, key) != Found(to, key));

    private static string? Found(IReadOnlyDictionary<string, string> values, string key) => values.GetValueOrDefault(key);

    private static BenchFile? Put(BenchFile into, IEnumerable<string> keys, IReadOnlyDictionary<string, string> values)
    {
        try
        {
            BenchFile put = into.Edit([.. keys.Select(key => BenchChange.ToText(key, values[key]))]);
            return put.IsUsable ? put : null;
        }
        catch (Exception cannot) when (cannot is ArgumentException or KeyNotFoundException)
        {
            return null; // a table that the other side does not have, a key that ours took away, or a list
        }
    }
}
