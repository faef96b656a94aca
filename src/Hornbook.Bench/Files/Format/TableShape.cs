namespace Hornbook.Bench.Files.Format;

/// <summary>A key of a table.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Value">What may stand after it.</param>
/// <param name="Meaning">What it says, for the reference and for editors.</param>
/// <param name="Default">What holds where the key is left out; null: it must be there.</param>
internal sealed record KeyRule(string Name, ValueRule Value, string Meaning, string? Default = null)
{
    /// <summary>Whether the key must be there.</summary>
    internal bool IsRequired => Default is null;
}

/// <summary>The keys of a table; some may depend on a word that the table gives first.</summary>
/// <param name="What">What the table is called in a message: "the source".</param>
/// <param name="Keys">The keys that it always has.</param>
internal sealed record TableShape(string What, params IReadOnlyList<KeyRule> Keys)
{
    /// <summary>The key whose word decides which further keys fit; null where none does.</summary>
    internal KeyRule? Kind { get; init; }

    /// <summary>The further keys of each word.</summary>
    internal IReadOnlyList<Variant> Variants { get; init; } = [];

    /// <summary>Keys of which some stand for others: width and height, or a diameter.</summary>
    internal IReadOnlyList<Either> Choices { get; init; } = [];

    /// <summary>The choices that there are when the deciding word is known.</summary>
    internal IReadOnlyList<Either> ChoicesFor(string? word) => [.. Choices, .. Variants.Where(variant => variant.Word == word).SelectMany(variant => variant.Choices)];

    /// <summary>The keys that fit when the deciding word is known, or all where it is not.</summary>
    internal IReadOnlyList<KeyRule> KeysFor(string? word) =>
    [
        .. Kind is null ? [] : (IEnumerable<KeyRule>)[Kind],
        .. Keys,
        .. Variants.Where(variant => word is null || variant.Word == word).SelectMany(variant => variant.Keys).DistinctBy(key => key.Name),
    ];
}

/// <summary>The keys that a table has for one deciding word.</summary>
/// <param name="Word">The word.</param>
/// <param name="Keys">The further keys.</param>
internal sealed record Variant(string Word, params IReadOnlyList<KeyRule> Keys)
{
    /// <summary>Those of its keys of which some stand for others.</summary>
    internal IReadOnlyList<Either> Choices { get; init; } = [];
}

/// <summary>Sets of keys of which one is given, and that one whole.</summary>
/// <param name="Sets">The sets.</param>
internal sealed record Either(params IReadOnlyList<KeySet> Sets)
{
    /// <summary>As a message names them: "width and height, or diameter".</summary>
    internal string Words => string.Join(", or ", Sets.Select(set => set.Words));
}

/// <summary>Keys that are given together.</summary>
/// <param name="Keys">The keys.</param>
internal sealed record KeySet(params IReadOnlyList<KeyRule> Keys)
{
    /// <summary>As a message names it: "width and height".</summary>
    internal string Words => string.Join(" and ", Keys.Select(key => key.Name));
}
