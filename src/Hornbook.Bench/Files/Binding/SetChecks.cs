using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Holds a table against its sets of keys: one set is given, and that one whole.</summary>
/// <param name="problems">Takes what is found.</param>
/// <param name="sets">The sets.</param>
/// <param name="isGiven">Whether a key stands in the table, right or wrong.</param>
internal sealed class SetChecks(ProblemList problems, IReadOnlyList<KeySet> sets, Func<KeyRule, bool> isGiven)
{
    private string All => string.Join(", or ", sets.Select(set => set.Words));

    /// <summary>Checks a table.</summary>
    internal void Check(TableNode node, TableShape shape)
    {
        KeySet[] given = [.. sets.Where(set => set.Keys.Any(isGiven))];
        if (sets.Count > 0 && given.Length == 0)
        {
            Add(node, $"{shape.What} has no {sets[0].Keys[0].Name}", $"it has {All}", Advice(sets[0].Keys));
        }
        else if (given.Length > 1)
        {
            KeyRule first = given[0].Keys.First(isGiven), second = given[1].Keys.First(isGiven);
            Entry? entry = node.Find(second.Name);
            problems.Add(entry?.KeyPlace ?? node.Place, $"{second.Name} stands beside {first.Name}", $"{shape.What} has {All}", "take one of the two away");
        }
        else if (given.Length == 1 && given[0].Keys.Where(key => !isGiven(key)).ToArray() is { Length: > 0 } missing)
        {
            Add(node, $"{shape.What} has no {missing[0].Name}", $"it has {given[0].Words}", Advice(missing));
        }
    }

    private static string Advice(IEnumerable<KeyRule> keys) => $"type {string.Join(" and ", keys.Select(key => $"{key.Name} = {key.Value.Example}"))}";

    private void Add(TableNode node, string read, string fits, string type) =>
        problems.Add(node.Place with { Length = node.Origin == TableOrigin.Inline ? 1 : node.Place.Length }, read, fits, type);
}
