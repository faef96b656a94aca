namespace Hornbook.Tabletop.Benches;

/// <summary>The examples that come with the program; never written into.</summary>
public static class ShippedBenches
{
    /// <summary>All of them.</summary>
    public static BenchFolder Folder { get; } = new(Path.Combine(AppContext.BaseDirectory, "examples"));

    // They do not change while the program runs.
    private static readonly Lazy<IReadOnlyList<BenchEntry>> Listed = new(() => [.. Folder.List().OrderBy(entry => entry.FileName, StringComparer.Ordinal)]);

    public static IReadOnlyList<BenchEntry> All => Listed.Value;
}
