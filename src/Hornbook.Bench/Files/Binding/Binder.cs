using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Holds a tree against the format: unknown keys, missing keys, values that do not fit.</summary>
/// <param name="problems">Takes what is found.</param>
/// <param name="broken">Lines that could not be read: a key that stands there is not called missing.</param>
internal sealed class Binder(ProblemList problems, string broken)
{
    private readonly ValueReader _values = new(problems);

    /// <summary>Checks a table.</summary>
    internal BoundTable Bind(TableNode node, TableShape shape)
    {
        string? word = WordOf(node, shape);
        BoundTable bound = new(node, word);
        HashSet<string> meant = [];
        foreach (Entry entry in node.Entries)
        {
            if (RuleFor(entry, node, shape, word) is KeyRule rule)
            {
                meant.Add(rule.Name);
                Set(bound, entry, rule, isCertain: word is not null || shape.Kind is null || shape.Keys.Contains(rule));
            }
        }

        ReportMissing(node, shape, word, meant);
        ChoiceChecks choices = new(problems, key => meant.Contains(key.Name) || IsBroken(key.Name));
        foreach (Either choice in shape.ChoicesFor(word))
        {
            choices.Check(choice, node, shape.What);
        }

        return bound;
    }

    private void Set(BoundTable bound, Entry entry, KeyRule rule, bool isCertain)
    {
        if ((isCertain || rule.Value is not QuantityRule) && Value(entry, rule.Value) is object value)
        {
            bound.Set(rule.Name, value, entry.Value);
        }
    }

    /// <summary>The deciding word of a table, where it is there and known.</summary>
    private static string? WordOf(TableNode node, TableShape shape) =>
        shape.Kind is KeyRule kind && node.Find(kind.Name)?.Value is ScalarNode { Value: string word }
            && shape.Variants.Any(variant => variant.Word == word)
            ? word
            : null;

    /// <summary>The rule of a key; of the key that is meant, where it is mistyped; null where no telling.</summary>
    private KeyRule? RuleFor(Entry entry, TableNode node, TableShape shape, string? word)
    {
        IReadOnlyList<KeyRule> keys = shape.KeysFor(word);
        KeyRule? rule = keys.FirstOrDefault(key => key.Name == entry.Key);
        if (rule is null)
        {
            problems.Add(entry.KeyPlace, UnknownKey.Of(entry.Key, keys, shape, word));
            string? near = Spelling.Nearest(entry.Key, keys.Select(key => key.Name).Where(name => node.Find(name) is null));
            rule = keys.FirstOrDefault(key => key.Name == near);
        }

        return rule;
    }

    private object? Value(Entry entry, ValueRule rule) => rule switch
    {
        TableRule table => Table(entry, table),
        NamedTablesRule named => Named(entry, named),
        ListRule list => List(entry, list),
        WordOrTableRule either => entry.Value is TableNode node ? Bind(node, either.Table.Shape) : _values.Read(entry.Key, entry.Value, either),
        _ => _values.Read(entry.Key, entry.Value, rule),
    };

    private BoundTable? Table(Entry entry, TableRule rule)
    {
        if (entry.Value is TableNode node)
        {
            return Bind(node, rule.Shape);
        }

        bool many = entry.Value is ListNode { OfTables: true };
        string name = Shown.Text(entry.Key);
        problems.Add(
            entry.KeyPlace,
            many ? $"[[{name}]] has two pairs of brackets" : $"{name} = {ValueReader.Raw(entry.Value)} is not a table",
            $"{rule.Shape.What} is one table",
            rule.IsInline ? $"type {name} = {rule.Example}" : $"type [{name}]" + (many ? string.Empty : " on a line of its own and its keys below"));
        return null;
    }

    private List<BoundItem>? Named(Entry entry, NamedTablesRule rule)
    {
        if (entry.Value is not TableNode node)
        {
            problems.Add(
                entry.KeyPlace, $"{entry.Key} is not a group of tables", $"each {rule.What} has a table of its own", $"type [{entry.Key}.a-name] and its keys below");
            return null;
        }

        if (node.Entries.Count < rule.Fewest)
        {
            problems.Add(node.Place, $"{entry.Key} is empty", $"a bench has one {rule.What} or more", $"type [{entry.Key}.a-name] and its keys below");
        }

        return [.. node.Entries.Select(item => NamedItem(item, entry.Key, rule)).OfType<BoundItem>()];
    }

    private BoundItem? NamedItem(Entry item, string group, NamedTablesRule rule)
    {
        if (item.Value is not TableNode table)
        {
            problems.Add(
                item.KeyPlace,
                $"{Shown.Text(item.Key)} stands directly under [{group}]",
                $"each {rule.What} has a table of its own",
                $"type [{group}.a-name] above it");
            return null;
        }

        _values.CheckName(item.Key, item.KeyPlace, item.Key);
        return new BoundItem(item.Key, Bind(table, rule.Item.Shape), item.KeyPlace);
    }

    private List<BoundItem>? List(Entry entry, ListRule rule)
    {
        if (entry.Value is not ListNode list)
        {
            string name = Shown.Text(entry.Key);
            problems.Add(
                entry.KeyPlace,
                entry.Value is TableNode { Origin: not TableOrigin.Inline } ? $"[{name}] has one pair of brackets" : $"{name} = {ValueReader.Raw(entry.Value)} is not a list",
                "a list fits",
                rule.Item is TableRule && rule.Fewest == 0 ? $"type [[{name}]]" : $"type {name} = {rule.Example}");
            return null;
        }

        if (list.Items.Count < rule.Fewest || list.Items.Count > rule.Most)
        {
            problems.Add(list.Place, $"{entry.Key} has {list.Items.Count} in its list", $"{rule.Fewest} to {rule.Most} fit", $"type {entry.Key} = {rule.Example}");
        }

        return [.. list.Items.Select(item => Item(entry, item, rule)).OfType<BoundItem>()];
    }

    private BoundItem? Item(Entry entry, Node item, ListRule rule)
    {
        if (rule.Item is TableRule table && item is not TableNode)
        {
            problems.Add(
                item.Place, $"{ValueReader.Raw(item)} is not a table", $"{table.Shape.What} is a table, in braces",
                rule.Example.StartsWith("[[", StringComparison.Ordinal) ? $"type {rule.Example} and its keys below" : $"type it like {entry.Key} = {rule.Example}");
            return null;
        }

        return Value(new Entry(entry.Key, item.Place, item), rule.Item) is object value ? new BoundItem(string.Empty, value, item.Place) : null;
    }

    private void ReportMissing(TableNode node, TableShape shape, string? word, HashSet<string> meant)
    {
        IEnumerable<KeyRule> needed = shape.Kind is not null && word is null ? shape.Keys.Prepend(shape.Kind) : shape.KeysFor(word);
        foreach (KeyRule key in needed.Where(key => key.IsRequired && !meant.Contains(key.Name) && !IsBroken(key.Name)))
        {
            problems.Add(
                node.Place with { Length = node.Origin == TableOrigin.Inline ? 1 : node.Place.Length },
                $"{shape.What} has no {key.Name}",
                $"it says: {char.ToLowerInvariant(key.Meaning[0])}{key.Meaning[1..].TrimEnd('.')}",
                key.Value is TableRule or NamedTablesRule ? $"type [{key.Name}{(key.Value is NamedTablesRule ? ".a-name" : string.Empty)}] and its keys below" : $"type {key.Name} = {key.Value.Example}");
        }
    }

    private bool IsBroken(string key) => broken.Contains(key, StringComparison.Ordinal);
}
