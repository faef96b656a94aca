namespace Hornbook.Tabletop;

/// <summary>Names for new things.</summary>
public static class Naming
{
    /// <summary>A name that is not taken: as wished, or with the first number from 2 on that makes it free.</summary>
    public static string Free(string like, IEnumerable<string> taken)
    {
        HashSet<string> names = [.. taken];
        return names.Contains(like) ? Enumerable.Range(2, int.MaxValue - 2).Select(i => $"{like}-{i}").First(name => !names.Contains(name)) : like;
    }
}
