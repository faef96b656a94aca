using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Binding;

/// <summary>What is said of a key that a table does not have.</summary>
internal static class UnknownKey
{
    /// <summary>Says it: mistyped, of another kind of thing, of another table, or simply unknown.</summary>
    internal static Misreading Of(string key, IReadOnlyList<KeyRule> keys, TableShape shape, string? word)
    {
        string[] names = [.. keys.Select(rule => rule.Name)];
        string read = $"{Shown.Text(key)} is not a key of {shape.What}";
        string fits = $"its keys are {Shown.Words(names)}";
        if (word is not null && shape.KeysFor(null).Any(rule => rule.Name == key))
        {
            string owners = Shown.Words([.. shape.Variants.Where(variant => variant.Keys.Any(rule => rule.Name == key)).Select(variant => $"\"{variant.Word}\"")]);
            return new Misreading($"{key} is no key of {shape.Kind!.Name} = \"{word}\"", $"it belongs to {owners}; here {fits}", "take the line away");
        }

        string? near = Spelling.Nearest(key, names);
        return new Misreading(read, fits, near is null ? Elsewhere(key) : $"type {near}");
    }

    private static string Elsewhere(string key)
    {
        string? owner = BenchFormat.File.Keys
            .Where(table => table.Value is TableRule of && of.Shape.KeysFor(null).Any(rule => rule.Name == key))
            .Select(table => table.Name)
            .FirstOrDefault();
        return owner is null ? "take the line away, or put # before it" : $"put the line under [{owner}]";
    }
}
