using System.Text.Json.Nodes;

namespace Hornbook.Tests.Commands;

/// <summary>The rule for JSON: a key that holds a number ends in its unit, or says that it is a pure number.</summary>
internal static class UnitOfKey
{
    private static readonly string[] Units =
        ["db", "dbi", "dbm", "db_per_m", "deg", "m", "mm", "hz", "w", "w_per_m2", "v", "v_per_m", "m2", "ohm", "s", "cents", "ratio", "count", "exponent"];

    /// <summary>The keys with a number that end in no unit.</summary>
    internal static IEnumerable<string> Missing(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(pair => IsNumber(pair.Value) && !HasUnit(pair.Key) ? [pair.Key] : Missing(pair.Value)),
        JsonArray a => a.SelectMany(Missing),
        _ => [],
    };

    private static bool IsNumber(JsonNode? node) => node is JsonValue value && value.TryGetValue(out double _);

    private static bool HasUnit(string key) => Units.Any(unit => key == unit || key.EndsWith("_" + unit, StringComparison.Ordinal));
}
