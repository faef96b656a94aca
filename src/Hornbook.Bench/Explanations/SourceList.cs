namespace Hornbook.Bench.Explanations;

/// <summary>Where things come from: docs/sources.md, which travels with the program.</summary>
public static class SourceList
{
    private static readonly IReadOnlyDictionary<string, string> Known = Read();

    /// <summary>Author, title and year of a key; the key itself where the list has it not.</summary>
    public static string Find(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return Known.GetValueOrDefault(key, key);
    }

    // A line of the list is "- **[Key]** text".
    private static Dictionary<string, string> Read()
    {
        const string Opening = "- **[", Closing = "]** ";
        using Stream stream = typeof(SourceList).Assembly.GetManifestResourceStream("sources.md")
            ?? throw new InvalidOperationException("the list of sources is not in the program");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().Split('\n')
            .Where(line => line.StartsWith(Opening, StringComparison.Ordinal) && line.Contains(Closing, StringComparison.Ordinal))
            .Select(line => line[Opening.Length..].TrimEnd().Split(Closing, 2))
            .ToDictionary(parts => parts[0], parts => parts[1]);
    }
}
