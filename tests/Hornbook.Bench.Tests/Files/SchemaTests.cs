using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Format;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class SchemaTests
{
    private static readonly string SchemaPath = Repository.At("docs", "bench-file.schema.json");

    [Fact]
    public void The_schema_in_the_documentation_follows_the_format() => Generated.Require(SchemaPath, BenchSchema.Write());

    [Fact]
    public void Every_key_of_the_reader_is_in_the_schema_and_the_other_way_round()
    {
        JsonNode schema = JsonNode.Parse(File.ReadAllText(SchemaPath))!;

        Assert.Equal(KeysOfFormat(BenchFormat.File, string.Empty).Order(), KeysOfSchema(schema, string.Empty).Order());
    }

    [Fact]
    public void What_the_schema_takes_as_a_key_the_reader_takes_too()
    {
        JsonNode schema = JsonNode.Parse(File.ReadAllText(SchemaPath))!;

        // The reader is asked, not its table: each key of the schema alone in its table must not be called unknown.
        foreach (string key in KeysOfSchema(schema, string.Empty).Where(key => !key.Contains('[', StringComparison.Ordinal)))
        {
            string[] parts = key.Split('.', StringSplitOptions.RemoveEmptyEntries);
            string text = parts.Length == 1 ? $"{parts[0]} = true" : $"[{parts[0]}]\n{parts[1]} = true";
            Assert.DoesNotContain(BenchFile.Parse(text, "bench.toml").Problems, problem => problem.Read.Contains("is not a key", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("62 cm", true)]
    [InlineData("62cm", true)]
    [InlineData("-1.5e-3 m", true)]
    [InlineData("62", false)]
    [InlineData("62 CM", false)]
    [InlineData("6,2 cm", false)]
    [InlineData("62 GHz", false)]
    public void Its_pattern_of_a_length_takes_what_the_reader_takes(string text, bool fits)
    {
        JsonNode schema = JsonNode.Parse(File.ReadAllText(SchemaPath))!;
        string pattern = (string)schema["properties"]!["source"]!["properties"]!["x"]!["pattern"]!;

        Assert.Equal(fits, Regex.IsMatch(text, pattern, RegexOptions.ECMAScript));
        Assert.Equal(fits, Hornbook.Bench.Files.Quantities.QuantityText.Read(text, Hornbook.Bench.Files.Quantities.Quantity.Length).Misreading is null);
    }

    private static IEnumerable<string> KeysOfFormat(TableShape shape, string above) => shape.KeysFor(null).SelectMany(key => key.Value switch
    {
        TableRule table => KeysOfFormat(table.Shape, $"{above}{key.Name}."),
        NamedTablesRule named => KeysOfFormat(named.Item.Shape, $"{above}{key.Name}[]."),
        ListRule { Item: TableRule table } => KeysOfFormat(table.Shape, $"{above}{key.Name}[]."),
        WordOrTableRule either => KeysOfFormat(either.Table.Shape, $"{above}{key.Name}[]."),
        _ => [],
    }).Concat(shape.KeysFor(null).Select(key => above + key.Name));

    private static IEnumerable<string> KeysOfSchema(JsonNode schema, string above)
    {
        JsonObject properties = schema["properties"]!.AsObject();

        // A key whose values depend on a word has its rule beside each word.
        IEnumerable<KeyValuePair<string, JsonNode?>> dependent = schema["allOf"]?.AsArray().Where(one => one!["then"] is not null).SelectMany(one => one!["then"]!["properties"]!.AsObject().Where(key => key.Value is JsonObject)) ?? [];
        foreach ((string key, JsonNode? value) in properties.Concat(dependent).DistinctBy(pair => pair.Key))
        {
            yield return above + key;
            JsonNode? inner = value?["properties"] is not null ? value : value?["items"] ?? value?["additionalProperties"] ?? value?["anyOf"]?[1];
            if (inner is JsonObject table && table["properties"] is not null)
            {
                string mark = value?["properties"] is not null ? "." : "[].";
                foreach (string deeper in KeysOfSchema(table, above + key + mark))
                {
                    yield return deeper;
                }
            }
        }
    }

}
