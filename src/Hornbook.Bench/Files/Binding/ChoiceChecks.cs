using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Whether of keys that stand for others one set is given, and that one whole.</summary>
/// <param name="problems">Takes what is found.</param>
/// <param name="isGiven">Whether a key stands in the table, right or wrong.</param>
internal sealed class ChoiceChecks(ProblemList problems, Func<KeyRule, bool> isGiven)
{
    /// <summary>Checks a table.</summary>
    internal void Check(Either choice, TableNode node, string what)
    {
        KeySet[] given = [.. choice.Sets.Where(set => set.Keys.Any(isGiven))];
        if (given.Length > 1)
        {
            KeyRule first = given[0].Keys.First(isGiven), second = given[1].Keys.First(isGiven);
            problems.Add(node.Find(second.Name)?.KeyPlace ?? node.Place, $"{second.Name} stands beside {first.Name}", $"{what} has {choice.Words}", "take one of the two away");
            return;
        }

        KeySet wanted = given.Length == 1 ? given[0] : choice.Sets[0];
        KeyRule[] missing = [.. wanted.Keys.Where(key => !isGiven(key))];
        if (missing.Length > 0)
        {
            problems.Add(
                node.Place with { Length = node.Origin == TableOrigin.Inline ? 1 : node.Place.Length },
                $"{what} has no {missing[0].Name}",
                $"it has {(given.Length == 1 ? wanted.Words : choice.Words)}",
                $"type {string.Join(" and ", missing.Select(key => $"{key.Name} = {key.Value.Example}"))}");
        }
    }
}
