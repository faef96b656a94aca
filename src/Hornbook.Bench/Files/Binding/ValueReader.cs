using System.Globalization;
using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Reads single values and says what is wrong with them.</summary>
/// <param name="problems">Takes what is found.</param>
internal sealed class ValueReader(ProblemList problems)
{
    private const int MostChoicesShown = 12;

    /// <summary>A value as it stands in the file, for a message.</summary>
    internal static string Raw(Node node) => node switch
    {
        ScalarNode scalar => Shown.Text(scalar.Raw),
        ListNode => "[ … ]",
        _ => "{ … }",
    };

    /// <summary>The value in SI, or null where it does not fit; why is then among the problems.</summary>
    internal object? Read(string key, Node node, ValueRule rule) => rule switch
    {
        TextRule text => Text(key, node, text),
        NameRule => String(key, node, rule, "a name") is string name ? CheckName(key, node.Place, name) : null,
        ChoiceRule choice => Choice(key, node, choice),
        WordOrTableRule either => Choice(key, node, either.Word),
        AntennaNameRule => String(key, node, rule, "the name of an antenna"),
        PanelNameRule => String(key, node, rule, "the name of a panel"),
        QuantityRule quantity => Quantity(key, node, quantity),
        RatioRule ratio => Ratio(key, node, ratio),
        CountRule count => Count(key, node, count),
        TruthRule truth => Truth(key, node, truth),
        _ => throw new InvalidOperationException($"{rule.GetType().Name} is read by the binder"),
    };

    /// <summary>The name, or null where it is not one.</summary>
    internal string? CheckName(string key, Place place, string name)
    {
        if (name.Length is > 0 and <= NameRule.Longest && name.All(one => char.IsLetterOrDigit(one) || one is '-' or '_'))
        {
            return name;
        }

        string plain = new string([.. name.Select(one => char.IsLetterOrDigit(one) || one is '-' or '_' ? one : '-')]).Trim('-');
        problems.Add(
            place,
            $"{QuantityText.Quoted(name)} is not a name",
            $"letters, digits, - and _ fit, {NameRule.Longest} at most",
            plain.Length is > 0 and <= NameRule.Longest ? $"type {(key == name ? plain : $"{key} = \"{plain}\"")}" : "type a short name");
        return null;
    }

    private string? Text(string key, Node node, TextRule rule)
    {
        string? text = String(key, node, rule, "a text");
        if (text is not null && (text.Length > rule.Longest || text.Trim().Length == 0 || text.Any(char.IsControl)))
        {
            problems.Add(
                node.Place, $"{key} = {Raw(node)} is {(text.Trim().Length == 0 ? "empty" : "too long or holds a line break")}",
                $"a text of 1 to {rule.Longest} characters on one line fits", $"type {key} = {rule.Example}");
            return null;
        }

        return text;
    }

    private string? String(string key, Node node, ValueRule rule, string what)
    {
        if (node is ScalarNode { Value: string text })
        {
            return text;
        }

        problems.Add(node.Place, $"{key} = {Raw(node)} is not {what}", $"{what} in quotes fits", $"type {key} = {rule.Example}");
        return null;
    }

    private string? Choice(string key, Node node, ChoiceRule rule)
    {
        string? text = (node as ScalarNode)?.Value as string;
        if (text is not null && rule.Choices.Contains(text, StringComparer.Ordinal))
        {
            return text;
        }

        string? near = text is null ? null : Spelling.Nearest(text, rule.Choices);
        problems.Add(
            node.Place, $"{key} = {Raw(node)} is not known", $"{Choices(rule.Choices, text)} fits",
            near is null ? $"type one of them, like {key} = \"{rule.Choices[0]}\"" : $"type {key} = \"{near}\"");
        return null;
    }

    /// <summary>All choices; of very many those that hold what was typed, or the first.</summary>
    private static string Choices(IReadOnlyList<string> choices, string? typed)
    {
        string[] quoted = [.. choices.Select(word => $"\"{word}\"")];
        if (quoted.Length <= MostChoicesShown)
        {
            return Shown.Words(quoted);
        }

        string[] like = [.. quoted.Where(word => typed is { Length: > 0 } && word.Contains(typed, StringComparison.OrdinalIgnoreCase)).Take(MostChoicesShown)];
        return $"{Shown.Words(like.Length > 0 ? like : quoted[..3])} (of {quoted.Length})";
    }

    private double? Quantity(string key, Node node, QuantityRule rule)
    {
        string? text = (node as ScalarNode)?.Value switch
        {
            string written => written,
            long or double => ((ScalarNode)node).Raw.Replace("_", string.Empty, StringComparison.Ordinal),
            _ => null,
        };
        if (text is null)
        {
            problems.Add(node.Place, $"{key} = {Raw(node)} is not a number with a unit", QuantityText.Fits(rule.Quantity), $"type {key} = {rule.Example}");
            return null;
        }

        QuantityReading reading = QuantityText.Read(text, rule.Quantity, rule.Example.Trim('"'));
        if (reading.Misreading is Misreading wrong)
        {
            bool bare = ((ScalarNode)node).Value is not string;
            problems.Add(node.Place, bare ? wrong with { Read = $"{key} = {Raw(node)} has no unit" } : wrong with { Read = $"{key} = {wrong.Read}" });
            return null;
        }

        return InRange(key, node, rule, reading.Value);
    }

    private double? InRange(string key, Node node, QuantityRule rule, double value)
    {
        // A limit typed exactly must pass although its conversion may round the last bit.
        double slack = 1e-12 * Math.Max(Math.Abs(rule.LowestSi), Math.Abs(rule.HighestSi));
        if (value >= rule.LowestSi - slack && value <= rule.HighestSi + slack)
        {
            return value;
        }

        bool small = value < rule.LowestSi;
        problems.Add(
            node.Place, $"{key} = {Raw(node)} is too {(small ? "small" : "large")}",
            $"from \"{rule.Lowest}\" to \"{rule.Highest}\" fits", small ? $"type \"{rule.Lowest}\" or more" : $"type \"{rule.Highest}\" or less");
        return null;
    }

    private double? Ratio(string key, Node node, RatioRule rule)
    {
        double? number = (node as ScalarNode)?.Value switch
        {
            long whole => whole,
            double real => real,
            string text when rule.Decibels && QuantityText.Read(text, Quantities.Quantity.VoltageRatio) is { Misreading: null } level => level.Value,
            _ => null,
        };
        if (number is double found && found >= rule.Lowest && found <= rule.Highest)
        {
            return found;
        }

        string range = string.Create(CultureInfo.InvariantCulture, $"from {rule.Lowest:0.######} to {rule.Highest:0.######}");
        problems.Add(
            node.Place,
            $"{key} = {Raw(node)} is {(number is double one ? (double.IsFinite(one) ? "out of range" : "not finite") : "not a pure number")}",
            $"a number without quotes {range} fits" + (rule.Decibels ? ", or the same in dB, in quotes" : string.Empty),
            $"type {key} = {rule.Example}");
        return null;
    }

    private bool? Truth(string key, Node node, TruthRule rule)
    {
        if (node is ScalarNode { Value: bool truth })
        {
            return truth;
        }

        problems.Add(node.Place, $"{key} = {Raw(node)} is neither true nor false", "true or false fits, without quotes", $"type {key} = {rule.Example}");
        return null;
    }

    private int? Count(string key, Node node, CountRule rule)
    {
        if (node is ScalarNode { Value: long count } && count >= rule.Lowest && count <= rule.Highest)
        {
            return (int)count;
        }

        problems.Add(
            node.Place,
            $"{key} = {Raw(node)} does not fit",
            rule.Lowest == rule.Highest ? $"this program reads {key} {rule.Lowest}" : $"a whole number without quotes from {rule.Lowest} to {rule.Highest} fits",
            $"type {key} = {rule.Example}");
        return null;
    }
}
