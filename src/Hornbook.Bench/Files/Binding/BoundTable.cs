using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>A table whose keys and values were checked one by one; what was wrong or left out is not in it.</summary>
/// <param name="Node">Where it stands in the file.</param>
/// <param name="Word">The word that decided its keys; null where none does.</param>
internal sealed record BoundTable(TableNode Node, string? Word)
{
    private readonly Dictionary<string, object> _values = [];
    private readonly Dictionary<string, Node> _nodes = [];

    /// <summary>Puts a checked value.</summary>
    internal void Set(string key, object value, Node node)
    {
        _values[key] = value;
        _nodes[key] = node;
    }

    /// <summary>Whether a key was given and is right.</summary>
    internal bool Has(string key) => _values.ContainsKey(key);

    /// <summary>A number in SI.</summary>
    internal double Number(string key) => (double)_values[key];

    /// <summary>A number in SI, or what holds where it is left out.</summary>
    internal double Number(string key, double otherwise) => _values.TryGetValue(key, out object? value) ? (double)value : otherwise;

    /// <summary>A whole number, or what holds where it is left out.</summary>
    internal int Count(string key, int otherwise) => _values.TryGetValue(key, out object? value) ? (int)value : otherwise;

    /// <summary>Whether a key says true; false where it is left out.</summary>
    internal bool IsTrue(string key) => _values.TryGetValue(key, out object? value) && (bool)value;

    /// <summary>A text.</summary>
    internal string Text(string key) => (string)_values[key];

    /// <summary>A text, or null where it is left out or wrong.</summary>
    internal string? TextOrNull(string key) => _values.GetValueOrDefault(key) as string;

    /// <summary>A table, or null where it is left out, wrong, or a word instead.</summary>
    internal BoundTable? Table(string key) => _values.GetValueOrDefault(key) as BoundTable;

    /// <summary>A list; empty where it is left out.</summary>
    internal IReadOnlyList<BoundItem> List(string key) => _values.GetValueOrDefault(key) as IReadOnlyList<BoundItem> ?? [];

    /// <summary>The value of a key that is there, as it stands in the file.</summary>
    internal Node NodeOf(string key) => _nodes[key];
}

/// <summary>One of a list, or one of several named tables.</summary>
/// <param name="Name">Its name; empty in a list.</param>
/// <param name="Value">What it is.</param>
/// <param name="Place">Where it stands: its name, or itself.</param>
internal sealed record BoundItem(string Name, object Value, Place Place);
