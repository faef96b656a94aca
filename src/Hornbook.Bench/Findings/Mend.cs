namespace Hornbook.Bench.Findings;

/// <summary>The one move that mends a finding.</summary>
/// <param name="Move">What to do, one sentence with the value to set.</param>
/// <param name="Key">The key of the bench file to change, such as "amplifier.gain"; null where it is none.</param>
/// <param name="NewText">What to write there, with its unit; null where there is no key.</param>
public sealed record Mend(string Move, string? Key = null, string? NewText = null)
{
    /// <summary>What else the same move sets; empty for most.</summary>
    public IReadOnlyList<MendedKey> Also { get; init; } = [];
}
