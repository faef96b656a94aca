namespace Hornbook.Bench.Files.Syntax;

/// <summary>A table: by header, by dotted keys or inline.</summary>
/// <param name="Place">The name in its header, or its first mention.</param>
/// <param name="Origin">How it came to be.</param>
internal sealed record TableNode(Place Place, TableOrigin Origin) : Node(Place)
{
    /// <summary>What it holds, in the order of the file.</summary>
    internal List<Entry> Entries { get; } = [];

    /// <summary>How it came to be; a header may claim a table that only a longer header had mentioned.</summary>
    internal TableOrigin Origin { get; set; } = Origin;

    /// <summary>The entry of a key, or null.</summary>
    internal Entry? Find(string key) => Entries.Find(entry => entry.Key == key);
}

/// <summary>How a table came to be.</summary>
internal enum TableOrigin
{
    /// <summary>A longer header mentioned it.</summary>
    Implied,

    /// <summary>A dotted key.</summary>
    Dotted,

    /// <summary>A header of its own, or the file itself.</summary>
    Header,

    /// <summary>Braces on one line.</summary>
    Inline,
}

/// <summary>A key and its value.</summary>
/// <param name="Key">The key, quotes taken off.</param>
/// <param name="KeyPlace">Where the key stands.</param>
/// <param name="Value">The value.</param>
internal sealed record Entry(string Key, Place KeyPlace, Node Value);
