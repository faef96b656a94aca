using System.Globalization;
using System.Text.RegularExpressions;

namespace Hornbook.Bench.Files.Quantities;

/// <summary>Between text such as "62 cm" and SI values: one number, one unit, a decimal point, letters as they are.</summary>
public static partial class QuantityText
{
    /// <summary>Reads a quantity.</summary>
    /// <param name="text">A number and a unit; a space between them is optional.</param>
    /// <param name="quantity">What the number must measure.</param>
    /// <param name="example">A text that fits, for the advice; by default one of the customary unit.</param>
    public static QuantityReading Read(string text, Quantity quantity, string? example = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(quantity);
        string plain = Normalised(text);
        Match number = NumberAtStart().Match(plain);
        example ??= $"1 {quantity.Units[0].Symbol}";
        return number.Success
            ? Read(text, number.Value, plain[number.Length..].Trim(), quantity, example)
            : QuantityReading.Not(Quoted(text) + " does not begin with a number", Fits(quantity), NumberAdvice(plain, example));
    }

    /// <summary>Writes a value in a unit so that it reads back: to the quantity's resolution, or six significant digits.</summary>
    public static string Write(double value, Unit unit, Quantity quantity)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(quantity);
        double number = unit.FromSi(value);
        string digits = quantity.Resolution > 0.0 ? ToStep(number, Math.Abs(unit.FromSi(quantity.Resolution))) : ToSignificant(number);
        return $"{digits} {unit.Symbol}";
    }

    /// <summary>The units that fit, as a message names them.</summary>
    internal static string Fits(Quantity quantity) =>
        $"{Article(quantity.Name)} {quantity.Name} fits, in {string.Join(", ", quantity.Units.Select(unit => unit.Symbol))}";

    internal static string Quoted(string text) => "\"" + Shown.Text(text) + "\"";

    private static QuantityReading Read(string text, string number, string unitText, Quantity quantity, string example)
    {
        if (unitText.Length == 0)
        {
            return QuantityReading.Not(Quoted(text) + " has no unit", Fits(quantity), Guess(number, quantity));
        }

        if (quantity.FindUnit(unitText) is not Unit unit)
        {
            return UnknownUnit(text, number, unitText, quantity, example);
        }

        double value = unit.ToSi(double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture));
        return double.IsFinite(value)
            ? QuantityReading.Of(value, unit)
            : QuantityReading.Not(Quoted(text) + " is too large a number", Fits(quantity), "type a smaller number");
    }

    private static QuantityReading UnknownUnit(string text, string number, string unitText, Quantity quantity, string example)
    {
        Match comma = CommaNumber().Match(unitText);
        if (comma.Success)
        {
            return DecimalComma(text, number, comma, quantity);
        }

        if (NearUnit(unitText, quantity) is Unit near)
        {
            return QuantityReading.Not($"{Quoted(text)} has an unknown unit {Quoted(unitText)}", Fits(quantity), Advice(number, near));
        }

        string read = Quantity.All.FirstOrDefault(one => one.FindUnit(unitText) is not null) is Quantity other
            ? $"{Quoted(text)} is {Article(other.Name)} {other.Name}"
            : unitText.Any(char.IsAsciiDigit)
                ? $"{Quoted(text)} is more than one number and one unit"
                : $"{Quoted(text)} has an unknown unit {Quoted(unitText)}";
        return QuantityReading.Not(read, Fits(quantity), $"type one number with one of these units, like \"{example}\"");
    }

    /// <summary>The unit of a spelling that is wrong in its capitals, or by one letter of four and more: "km" must not become "cm".</summary>
    private static Unit? NearUnit(string unitText, Quantity quantity) => quantity.Units.FirstOrDefault(unit => unit.AlsoWritten.Prepend(unit.Symbol).Any(
        spelling => string.Equals(spelling, unitText, StringComparison.OrdinalIgnoreCase)
            || (unitText.Length >= 4 && unitText.Length <= 2 * spelling.Length && Spelling.Distance(unitText, spelling) == 1)));

    private static QuantityReading DecimalComma(string text, string number, Match comma, Quantity quantity)
    {
        string rest = comma.Groups["rest"].Value.Trim();
        Unit unit = quantity.FindUnit(rest) ?? quantity.Units[0];
        string decimals = comma.Groups["digits"].Value;
        string advice = decimals.Length == 3
            ? $"type \"{number}.{decimals} {unit.Symbol}\", or \"{number}{decimals} {unit.Symbol}\" if thousands are meant"
            : Advice($"{number}.{decimals}", unit);
        return QuantityReading.Not(Quoted(text) + " has a comma in its number", "a decimal point fits", advice);
    }

    private static string NumberAdvice(string plain, string example) =>
        plain.TrimStart('+', '-').StartsWith("nan", StringComparison.OrdinalIgnoreCase)
            || plain.TrimStart('+', '-').StartsWith("inf", StringComparison.OrdinalIgnoreCase)
            ? "type a finite number and its unit"
            : $"type a number and its unit, like \"{example}\"";

    private static string Advice(string number, Unit unit) => $"type \"{number} {unit.Symbol}\"";

    private static string Guess(string number, Quantity quantity) => $"type it with a unit, like \"{number} {quantity.Units[0].Symbol}\"";

    private static string Article(string noun) => "aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an" : "a";

    /// <summary>One form for look-alikes that keyboards and copied text mix: micro and mu, ohm and omega, minus signs, spaces.</summary>
    private static string Normalised(string text) => text
        .Replace('\u03BC', '\u00B5').Replace('\u2126', '\u03A9').Replace('\u2212', '-')
        .Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2009', ' ').Trim(' ');

    private static string ToStep(double number, double step)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 15);
        string digits = number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        string trimmed = digits.Contains('.', StringComparison.Ordinal) ? digits.TrimEnd('0').TrimEnd('.') : digits;
        return trimmed == "-0" ? "0" : trimmed;
    }

    private static string ToSignificant(double number) => number.ToString("G6", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAtStart();

    [GeneratedRegex(@"^,(?<digits>[0-9]+)(?<rest>[^0-9,]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex CommaNumber();
}
