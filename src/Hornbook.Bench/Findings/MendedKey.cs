namespace Hornbook.Bench.Findings;

/// <summary>One value of the bench file that a mend sets.</summary>
/// <param name="Key">The key, such as "receiver.z".</param>
/// <param name="NewText">What to write there, with its unit.</param>
public readonly record struct MendedKey(string Key, string NewText);
