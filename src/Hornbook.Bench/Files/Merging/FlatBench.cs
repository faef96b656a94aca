using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Merging;

/// <summary>Every value of a bench file under its dotted key, as it is written there; comments, order and spacing left out.</summary>
internal static class FlatBench
{
    /// <summary>The values of a usable file; tables under one [[name]] go by their own names.</summary>
    internal static IReadOnlyDictionary<string, string> Of(BenchFile file)
    {
        Dictionary<string, string> values = [];
        Gather(TomlText.Read(file.Text.TrimStart('\uFEFF')).Root, string.Empty, values);
        return values;
    }

    private static void Gather(TableNode table, string prefix, Dictionary<string, string> values)
    {
        foreach (Entry entry in table.Entries)
        {
            Gather(entry.Value, prefix + entry.Key, values);
        }
    }

    private static void Gather(Node node, string key, Dictionary<string, string> values)
    {
        switch (node)
        {
            case TableNode table:
                Gather(table, key + ".", values);
                break;
            case ListNode { OfTables: true } list:
                foreach (TableNode item in list.Items.OfType<TableNode>())
                {
                    Gather(item, $"{key}.{Written(item.Find("name")?.Value)}.", values);
                }

                break;
            default:
                values[key] = Written(node);
                break;
        }
    }

    private static string Written(Node? node) => node switch
    {
        ScalarNode { Value: string text } => text,
        ScalarNode scalar => scalar.Raw,
        ListNode list => $"[{string.Join(", ", list.Items.Select(Written))}]",
        TableNode table => $"{{ {string.Join(", ", table.Entries.Select(entry => $"{entry.Key} = {Written(entry.Value)}"))} }}",
        _ => string.Empty,
    };
}
