namespace Hornbook.Bench.Files.Merging;

/// <summary>A key that both sides changed, each to something else.</summary>
/// <param name="Key">The key with its tables.</param>
/// <param name="Ours">What our side has there, as written; null where it took the key away.</param>
/// <param name="Theirs">What the other side has there; null where it took the key away.</param>
public sealed record MergeConflict(string Key, string? Ours, string? Theirs);
