using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Editing;

/// <summary>Where a dotted key leads: in the file and in the format.</summary>
/// <param name="Table">The table that holds the key, or will; null where the table itself is not in the file.</param>
/// <param name="Header">Name of that table as a header gives it.</param>
/// <param name="Rule">What the format says of the key.</param>
internal sealed record KeyPath(TableNode? Table, string Header, KeyRule Rule)
{
    /// <summary>Follows a key.</summary>
    /// <exception cref="ArgumentException">The format has no such key, or the file no such table.</exception>
    internal static KeyPath Follow(string key, TableNode root)
    {
        string[] parts = key.Split('.');
        (TableNode? Node, TableShape Shape) at = (root, BenchFormat.File);
        for (int i = 0; i < parts.Length - 1; i++)
        {
            KeyRule rule = RuleOf(parts[i], at.Shape, key);
            at = rule.Value switch
            {
                TableRule table => (at.Node?.Find(parts[i])?.Value as TableNode, table.Shape),
                WordOrTableRule either => (Inside(at.Node, parts[i], key), either.Table.Shape),
                NamedTablesRule named => (Inside(Inside(at.Node, parts[i], key), parts[++i], key), named.Item.Shape),
                ListRule { Item: TableRule item } => (Listed(at.Node, parts[i], parts[++i], key), item.Shape),
                _ => throw Unknown(key, at.Shape),
            };
        }

        return new KeyPath(at.Node, string.Join('.', parts[..^1]), RuleOf(parts[^1], at.Shape, key, at.Node));
    }

    private static KeyRule RuleOf(string name, TableShape shape, string key, TableNode? node = null)
    {
        string? word = shape.Kind is KeyRule kind ? (node?.Find(kind.Name)?.Value as ScalarNode)?.Value as string : null;
        return shape.KeysFor(word).FirstOrDefault(rule => rule.Name == name) ?? throw Unknown(key, shape);
    }

    private static TableNode Inside(TableNode? node, string name, string key) =>
        node?.Find(name)?.Value as TableNode ?? throw new ArgumentException($"{key}: the file has no table {name}", nameof(key));

    private static TableNode Listed(TableNode? node, string list, string name, string key) =>
        (node?.Find(list)?.Value as ListNode)?.Items.OfType<TableNode>()
            .FirstOrDefault(item => item.Find("name")?.Value is ScalarNode { Value: string found } && found == name)
        ?? throw new ArgumentException($"{key}: no table of {list} has the name {name}", nameof(key));

    private static ArgumentException Unknown(string key, TableShape shape) =>
        new($"{key}: {shape.What} has the keys {Shown.Words([.. shape.KeysFor(null).Select(rule => rule.Name)])}", nameof(key));
}
