using System.Globalization;
using System.Text;

namespace Hornbook.Bench.Files.Format;

/// <summary>The tables of keys in the reference of the bench file.</summary>
internal static class BenchReference
{
    /// <summary>A table of the keys of a shape, as Markdown.</summary>
    internal static string Table(TableShape shape)
    {
        StringBuilder text = new("| key | what fits | left out | meaning |\n| --- | --- | --- | --- |\n");
        foreach (KeyRule key in shape.Kind is null ? shape.Keys : [shape.Kind, .. shape.Keys])
        {
            text.Append(Row(key, null));
        }

        foreach (IGrouping<KeyRule, Variant> shared in Shared(shape))
        {
            text.Append(Row(shared.Key, $"{Shown.Words([.. shared.Select(variant => $"`\"{variant.Word}\"`")])}"));
        }

        return text.ToString();
    }

    /// <summary>The keys that only some words have, each once with its words.</summary>
    private static IEnumerable<IGrouping<KeyRule, Variant>> Shared(TableShape shape) =>
        shape.Variants.SelectMany(variant => variant.Keys.Select(key => (Key: key, Variant: variant))).GroupBy(pair => pair.Key, pair => pair.Variant);

    private static string Row(KeyRule key, string? words) =>
        $"| `{key.Name}` | {Fits(key.Value)} | {(key.IsRequired ? "*needed*" : Code(key.Default!))} | {(words is null ? string.Empty : $"With {words}. ")}{key.Meaning} |\n";

    private static string Code(string otherwise) => otherwise.StartsWith('"') || otherwise is "false" || char.IsAsciiDigit(otherwise[0]) ? $"`{otherwise}`" : otherwise;

    private static string Fits(ValueRule rule) => rule switch
    {
        TableRule => "a table",
        NamedTablesRule named => $"tables, one for each {named.What}",
        ListRule { Item: TableRule } list => string.Create(CultureInfo.InvariantCulture, $"a list of {list.Fewest} to {list.Most} tables"),
        ListRule list => string.Create(CultureInfo.InvariantCulture, $"a list of {list.Fewest} to {list.Most}, like `{list.Example}`"),
        WordOrTableRule either => $"{Fits(either.Word)}; or a table",
        ChoiceRule choice => Shown.Words([.. choice.Choices.Select(word => $"`\"{word}\"`")]),
        QuantityRule quantity => $"{quantity.Quantity.Name}, {quantity.Lowest} to {quantity.Highest}: `{quantity.Example}`",
        RatioRule ratio => string.Create(CultureInfo.InvariantCulture, $"number, {ratio.Lowest:0.######} to {ratio.Highest:0.######}: `{ratio.Example}`{(ratio.Decibels ? ", or in dB" : string.Empty)}"),
        TruthRule => "`true` or `false`",
        CountRule count when count.Lowest == count.Highest => $"`{count.Example}`",
        CountRule count => string.Create(CultureInfo.InvariantCulture, $"whole number, {count.Lowest} to {count.Highest}: `{count.Example}`"),
        AntennaNameRule => $"name of an antenna: `{rule.Example}`",
        PanelNameRule => $"name of a panel: `{rule.Example}`",
        NameRule => string.Create(CultureInfo.InvariantCulture, $"name of at most {NameRule.Longest} letters, digits, - and _: `{rule.Example}`"),
        _ => $"text: `{rule.Example}`",
    };
}
