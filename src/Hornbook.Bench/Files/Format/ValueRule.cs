using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files.Format;

/// <summary>What may stand after a key.</summary>
/// <param name="Example">A value as it is typed, quotes included.</param>
internal abstract record ValueRule(string Example);

/// <summary>Free text on one line.</summary>
/// <param name="Example">A value as it is typed.</param>
/// <param name="Longest">Most characters.</param>
internal sealed record TextRule(string Example, int Longest) : ValueRule(Example);

/// <summary>A short name: letters, digits, hyphens, underscores.</summary>
/// <param name="Example">A value as it is typed.</param>
internal sealed record NameRule(string Example) : ValueRule(Example)
{
    /// <summary>Most characters of a name.</summary>
    internal const int Longest = 40;
}

/// <summary>One of a few words.</summary>
/// <param name="Choices">The words.</param>
internal sealed record ChoiceRule(params IReadOnlyList<string> Choices) : ValueRule($"\"{Choices[0]}\"");

/// <summary>The name of an antenna of this file.</summary>
/// <param name="Example">A value as it is typed.</param>
internal sealed record AntennaNameRule(string Example) : ValueRule(Example);

/// <summary>The name of a panel of this file.</summary>
/// <param name="Example">A value as it is typed.</param>
internal sealed record PanelNameRule(string Example) : ValueRule(Example);

/// <summary>A number with a unit, in quotes.</summary>
/// <param name="Quantity">What it measures.</param>
/// <param name="Lowest">The lowest that fits, as text.</param>
/// <param name="Highest">The highest that fits, as text.</param>
/// <param name="Example">A value as it is typed.</param>
internal sealed record QuantityRule(Quantity Quantity, string Lowest, string Highest, string Example) : ValueRule(Example)
{
    /// <summary>The lowest that fits, SI.</summary>
    internal double LowestSi { get; } = QuantityText.Read(Lowest, Quantity).Value;

    /// <summary>The highest that fits, SI.</summary>
    internal double HighestSi { get; } = QuantityText.Read(Highest, Quantity).Value;
}

/// <summary>A pure number, not in quotes; or the same in decibels where that is customary.</summary>
/// <param name="Lowest">The lowest that fits.</param>
/// <param name="Highest">The highest that fits.</param>
/// <param name="Example">A value as it is typed.</param>
/// <param name="Decibels">Whether "54 dB" fits too (20 log10).</param>
internal sealed record RatioRule(double Lowest, double Highest, string Example, bool Decibels = false) : ValueRule(Example);

/// <summary>A whole number, not in quotes.</summary>
/// <param name="Lowest">The lowest that fits.</param>
/// <param name="Highest">The highest that fits.</param>
/// <param name="Example">A value as it is typed.</param>
internal sealed record CountRule(int Lowest, int Highest, string Example) : ValueRule(Example);

/// <summary>true or false, not in quotes.</summary>
/// <param name="Example">A value as it is typed.</param>
internal sealed record TruthRule(string Example) : ValueRule(Example);

/// <summary>A table with known keys.</summary>
/// <param name="Shape">Its keys.</param>
/// <param name="Example">The table as it is typed in one line, where that is customary.</param>
internal sealed record TableRule(TableShape Shape, string Example = TableRule.Braces) : ValueRule(Example)
{
    private const string Braces = "{ … }";

    /// <summary>Whether it is customary in one line, in braces, rather than below a header of its own.</summary>
    internal bool IsInline => Example != Braces;
}

/// <summary>One of a few words, or a table instead.</summary>
/// <param name="Word">The words.</param>
/// <param name="Table">The table.</param>
internal sealed record WordOrTableRule(ChoiceRule Word, TableRule Table) : ValueRule(Word.Example);

/// <summary>Tables of one shape, each under a name of the user's choice.</summary>
/// <param name="Item">Each table.</param>
/// <param name="What">What one is called in a message: "antenna".</param>
/// <param name="Fewest">How many there are at least.</param>
internal sealed record NamedTablesRule(TableRule Item, string What, int Fewest) : ValueRule("{ … }");

/// <summary>A list.</summary>
/// <param name="Item">Each value.</param>
/// <param name="Fewest">Least length.</param>
/// <param name="Most">Greatest length.</param>
/// <param name="Example">A value as it is typed.</param>
internal sealed record ListRule(ValueRule Item, int Fewest, int Most, string Example) : ValueRule(Example);
