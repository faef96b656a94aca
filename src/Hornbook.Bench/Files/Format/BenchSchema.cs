using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>The format as a JSON schema (2020-12), from which editors complete and check a bench file while it is typed.</summary>
/// <remarks>It says less than the reader: ranges of quantities, names that must exist and sizes against each other are not in it.</remarks>
internal static class BenchSchema
{
    private const string Number = @"[+\-−]?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+\-]?[0-9]+)?";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The schema as text.</summary>
    internal static string Write()
    {
        JsonObject schema = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Hornbook bench file",
        };
        foreach ((string key, JsonNode? value) in Table(BenchFormat.File))
        {
            schema[key] = value?.DeepClone();
        }

        return schema.ToJsonString(Indented) + "\n";
    }

    private static JsonObject Table(TableShape shape)
    {
        JsonObject table = new() { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = Properties(shape.KeysFor(null), shape) };
        table["required"] = Names((shape.Kind is null ? shape.Keys : [shape.Kind, .. shape.Keys]).Where(key => key.IsRequired));
        if (shape.Kind is not null)
        {
            table["allOf"] = new JsonArray([.. shape.Variants.Select(variant => (JsonNode)OfKind(shape, variant))]);
        }

        return WithChoices(table, shape.Choices);
    }

    /// <summary>What holds once the deciding word is typed: its keys are needed and no other word's keys fit.</summary>
    private static JsonObject OfKind(TableShape shape, Variant variant)
    {
        JsonObject properties = Properties(variant.Keys, null);
        string[] own = [.. shape.KeysFor(variant.Word).Select(key => key.Name)];
        foreach (KeyRule other in shape.KeysFor(null).Where(key => !own.Contains(key.Name)))
        {
            properties[other.Name] = false;
        }

        return new JsonObject
        {
            ["if"] = new JsonObject
            {
                ["properties"] = new JsonObject { [shape.Kind!.Name] = new JsonObject { ["const"] = variant.Word } },
                ["required"] = new JsonArray(shape.Kind.Name),
            },
            ["then"] = WithChoices(new JsonObject { ["properties"] = properties, ["required"] = Names(variant.Keys.Where(key => key.IsRequired)) }, variant.Choices),
        };
    }

    private static JsonObject WithChoices(JsonObject table, IReadOnlyList<Either> choices)
    {
        if (choices.Count > 0)
        {
            JsonArray all = table["allOf"] as JsonArray ?? [];
            foreach (Either choice in choices)
            {
                all.Add(new JsonObject { ["oneOf"] = new JsonArray([.. choice.Sets.Select(set => (JsonNode)new JsonObject { ["required"] = Names(set.Keys) })]) });
            }

            table["allOf"] = all;
        }

        return table;
    }

    /// <summary>The keys with what fits; where it depends on the deciding word, the meaning only.</summary>
    private static JsonObject Properties(IReadOnlyList<KeyRule> keys, TableShape? shape)
    {
        JsonObject properties = [];
        foreach (KeyRule key in keys)
        {
            bool depends = shape is not null && shape.Variants.SelectMany(variant => variant.Keys).Where(one => one.Name == key.Name).Distinct().Count() > 1;
            JsonObject value = depends ? [] : Value(key.Value);
            value["description"] = depends ? "Depends on " + shape!.Kind!.Name + "." : Description(key);
            properties[key.Name] = value;
        }

        return properties;
    }

    private static string Description(KeyRule key) => $"{key.Meaning}{(key.IsRequired ? string.Empty : $" Left out: {key.Default!.Trim('"')}.")}";

    private static JsonObject Value(ValueRule rule) => rule switch
    {
        TableRule table => Table(table.Shape),
        NamedTablesRule named => new JsonObject { ["type"] = "object", ["minProperties"] = named.Fewest, ["additionalProperties"] = Table(named.Item.Shape) },
        ListRule list => new JsonObject { ["type"] = "array", ["minItems"] = list.Fewest, ["maxItems"] = list.Most, ["items"] = Value(list.Item) },
        WordOrTableRule either => new JsonObject { ["anyOf"] = new JsonArray(Value(either.Word), Value(either.Table)) },
        ChoiceRule choice => new JsonObject { ["type"] = "string", ["enum"] = new JsonArray([.. choice.Choices.Select(word => (JsonNode)word)]) },
        QuantityRule quantity => Quantity(quantity.Quantity, quantity.Example),
        RatioRule ratio => Ratio(ratio),
        CountRule count => new JsonObject { ["type"] = "integer", ["minimum"] = count.Lowest, ["maximum"] = count.Highest },
        TruthRule => new JsonObject { ["type"] = "boolean" },
        NameRule => new JsonObject { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = NameRule.Longest },
        TextRule text => new JsonObject { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = text.Longest },
        _ => new JsonObject { ["type"] = "string" },
    };

    private static JsonObject Ratio(RatioRule rule)
    {
        JsonObject number = new() { ["type"] = "number", ["minimum"] = rule.Lowest, ["maximum"] = rule.Highest };
        return rule.Decibels ? new JsonObject { ["anyOf"] = new JsonArray(number, Quantity(Quantities.Quantity.VoltageRatio, "\"20 dB\"")) } : number;
    }

    private static JsonObject Quantity(Quantity quantity, string example)
    {
        IEnumerable<string> units = quantity.Units.SelectMany(unit => unit.AlsoWritten.Prepend(unit.Symbol)).Select(Regex.Escape);
        return new JsonObject
        {
            ["type"] = "string",
            ["pattern"] = $"^ *{Number} *({string.Join('|', units)}) *$",
            ["examples"] = new JsonArray(example.Trim('"')),
        };
    }

    private static JsonArray Names(IEnumerable<KeyRule> keys) => new([.. keys.Select(key => (JsonNode)key.Name)]);
}
