using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;

namespace Hornbook.Tabletop.Desk;

/// <summary>A finding's one move, made on the desk.</summary>
public static class Mending
{
    // A file that says so does not make the source weaker: these are for whoever has measured it to write.
    private static readonly string[] NotByButton = ["source.power", "source.worst_case_power"];

    /// <summary>Whether it is something that the page can do; else a person has to.</summary>
    public static bool CanDo(Mend mend)
    {
        ArgumentNullException.ThrowIfNull(mend);
        return mend is { Key: string key, NewText: not null } && !NotByButton.Contains(key);
    }

    /// <summary>The values that it sets.</summary>
    public static IReadOnlyList<BenchChange> Changes(Mend mend)
    {
        ArgumentNullException.ThrowIfNull(mend);
        return CanDo(mend) ? [BenchChange.ToText(mend.Key!, mend.NewText!), .. mend.Also.Select(also => BenchChange.ToText(also.Key, also.NewText))] : [];
    }
}
