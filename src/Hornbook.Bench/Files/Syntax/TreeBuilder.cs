using Hornbook.Bench.Files.Quantities;
using Tomlyn.Syntax;

namespace Hornbook.Bench.Files.Syntax;

/// <summary>Turns the library's syntax tree, which follows the lines of the file, into one tree of tables; finds what is defined twice.</summary>
internal sealed class TreeBuilder
{
    private readonly LineIndex _lines;
    private readonly List<PlacedProblem> _problems = [];

    private TreeBuilder(LineIndex lines) => _lines = lines;

    /// <summary>Builds the tree.</summary>
    internal static (TableNode Root, IReadOnlyList<PlacedProblem> Problems) Build(DocumentSyntax document, LineIndex lines)
    {
        TreeBuilder builder = new(lines);
        TableNode root = new(Place.Start, TableOrigin.Header);
        builder.AddAll(document.KeyValues, root);
        foreach (TableSyntaxBase table in document.Tables)
        {
            if (table.Name is KeySyntax name && builder.Open(root, builder.Parts(name), table is TableArraySyntax) is TableNode opened)
            {
                builder.AddAll(table.Items, opened);
            }
        }

        return (root, builder._problems);
    }

    private void AddAll(SyntaxList<KeyValueSyntax> items, TableNode table)
    {
        foreach (KeyValueSyntax item in items)
        {
            Add(item, table);
        }
    }

    private void Add(KeyValueSyntax item, TableNode table)
    {
        if (item.Key is null || item.Value is null || item.Value.Span.Length == 0)
        {
            return;
        }

        List<(string Key, Place Place)> parts = Parts(item.Key);
        TableNode? holder = table;
        foreach ((string key, Place place) in parts.SkipLast(1))
        {
            holder = holder is null ? null : Enter(holder, key, place, TableOrigin.Dotted);
        }

        if (holder is not null && parts.Count > 0 && IsNew(holder, parts[^1].Key, parts[^1].Place))
        {
            holder.Entries.Add(new Entry(parts[^1].Key, parts[^1].Place, Value(item.Value)));
        }
    }

    private TableNode? Open(TableNode root, List<(string Key, Place Place)> parts, bool inList)
    {
        TableNode? holder = root;
        foreach ((string key, Place place) in parts.SkipLast(1))
        {
            holder = holder is null ? null : Enter(holder, key, place, TableOrigin.Implied);
        }

        return holder is null || parts.Count == 0 ? null
            : inList ? OpenInList(holder, parts[^1].Key, parts[^1].Place)
            : OpenTable(holder, parts[^1].Key, parts[^1].Place);
    }

    /// <summary>The table of a key on the way to a deeper one, made where there is none yet.</summary>
    private TableNode? Enter(TableNode holder, string key, Place place, TableOrigin origin)
    {
        if (holder.Find(key) is not Entry entry)
        {
            TableNode made = new(place, origin);
            holder.Entries.Add(new Entry(key, place, made));
            return made;
        }

        TableNode? found = entry.Value is ListNode { OfTables: true } list ? (TableNode)list.Items[^1] : entry.Value as TableNode;
        bool closed = found is null or { Origin: TableOrigin.Inline } || (origin == TableOrigin.Dotted && found.Origin != TableOrigin.Dotted);
        return closed ? Refuse(key, place, entry) : found;
    }

    private TableNode? OpenTable(TableNode holder, string key, Place place)
    {
        if (holder.Find(key) is not Entry entry)
        {
            return Enter(holder, key, place, TableOrigin.Header);
        }

        if (entry.Value is TableNode { Origin: TableOrigin.Implied } implied)
        {
            implied.Origin = TableOrigin.Header;
            return implied;
        }

        return Refuse(key, place, entry);
    }

    private TableNode? OpenInList(TableNode holder, string key, Place place)
    {
        if (holder.Find(key) is Entry entry && entry.Value is not ListNode { OfTables: true })
        {
            return Refuse(key, place, entry);
        }

        TableNode item = new(place, TableOrigin.Header);
        if (holder.Find(key)?.Value is ListNode list)
        {
            list.Items.Add(item);
            return item;
        }

        ListNode made = new(place, OfTables: true);
        made.Items.Add(item);
        holder.Entries.Add(new Entry(key, place, made));
        return item;
    }

    private bool IsNew(TableNode holder, string key, Place place)
    {
        Entry? entry = holder.Find(key);
        if (entry is not null)
        {
            Refuse(key, place, entry);
        }

        return entry is null;
    }

    private TableNode? Refuse(string key, Place place, Entry first)
    {
        _problems.Add(new PlacedProblem(place, new Misreading(
            $"{Shown.Text(key)} is given a second time", $"it stands once; first on line {first.KeyPlace.Line}", "take one of the two away")));
        return null;
    }

    private Node Value(ValueSyntax value) => value switch
    {
        ArraySyntax array => List(array),
        InlineTableSyntax table => Inline(table),
        _ => new ScalarNode(Spot(value), Scalar(value), _lines.Text.Substring(value.Span.Offset, value.Span.Length)),
    };

    private ListNode List(ArraySyntax array)
    {
        ListNode list = new(Spot(array), OfTables: false);
        list.Items.AddRange(array.Items.Where(item => item.Value is not null).Select(item => Value(item.Value!)));
        return list;
    }

    private TableNode Inline(InlineTableSyntax inline)
    {
        TableNode table = new(Spot(inline), TableOrigin.Inline);
        foreach (InlineTableItemSyntax item in inline.Items)
        {
            if (item.KeyValue is not null)
            {
                Add(item.KeyValue, table);
            }
        }

        return table;
    }

    private static object? Scalar(ValueSyntax value) => value switch
    {
        StringValueSyntax text => text.Value ?? string.Empty,
        IntegerValueSyntax whole => whole.Value,
        FloatValueSyntax real => real.Value,
        BooleanValueSyntax truth => truth.Value,
        _ => null,
    };

    private List<(string Key, Place Place)> Parts(KeySyntax key)
    {
        List<(string Key, Place Place)> parts = [];
        BareKeyOrStringValueSyntax?[] all = [key.Key, .. key.DotKeys.Select(dotted => dotted.Key)];
        foreach (BareKeyOrStringValueSyntax part in all.OfType<BareKeyOrStringValueSyntax>())
        {
            parts.Add((part is StringValueSyntax quoted ? quoted.Value ?? string.Empty : ((BareKeySyntax)part).Key?.Text ?? string.Empty, Spot(part)));
        }

        return parts;
    }

    private Place Spot(SyntaxNode node) => _lines.At(node.Span.Offset, node.Span.Length);
}
