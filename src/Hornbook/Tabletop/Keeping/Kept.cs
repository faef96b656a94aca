using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Merging;

namespace Hornbook.Tabletop.Keeping;

/// <summary>How the file stands to the bench on the desk.</summary>
public abstract record Kept
{
    private Kept()
    {
    }

    /// <summary>Nothing has been done that a file would have to hold.</summary>
    public sealed record Untouched : Kept;

    /// <summary>The file has it.</summary>
    public sealed record Safe : Kept;

    /// <summary>It is about to be written.</summary>
    public sealed record Pending : Kept;

    /// <summary>It could not be written; the desk still has it.</summary>
    /// <param name="Why">What the system said.</param>
    public sealed record Failed(string Why) : Kept;

    /// <summary>An editor left a file that cannot be used. It is not written over.</summary>
    /// <param name="Why">The first thing that is wrong.</param>
    public sealed record Unusable(string Why) : Kept;

    /// <summary>The page and an editor changed the same things differently: a person chooses.</summary>
    /// <param name="Merge">What is in question, and what either choice would give where it can be joined.</param>
    /// <param name="Ours">What the desk had.</param>
    /// <param name="Theirs">What the file has.</param>
    public sealed record Disputed(BenchMerge Merge, BenchFile Ours, BenchFile Theirs) : Kept;
}
