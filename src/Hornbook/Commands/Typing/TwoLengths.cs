using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Commands.Typing;

/// <summary>A width and a height as one text, "22.86 mm x 10.16 mm".</summary>
internal static class TwoLengths
{
    /// <summary>Reads both.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="lengths">Both [m]; zeros where there is an error.</param>
    /// <returns>What is wrong and what would fit; null where nothing is.</returns>
    internal static string? Read(string text, out (double First, double Second) lengths)
    {
        lengths = default;
        string[] parts = text.Replace('×', 'x').Split('x', StringSplitOptions.TrimEntries);
        if (parts.Length != 2)
        {
            return $"\"{text}\" is not two lengths; type both with their units, like \"40 cm x 60 cm\"";
        }

        QuantityReading first = QuantityText.Read(parts[0], Quantity.Length), second = QuantityText.Read(parts[1], Quantity.Length);
        lengths = (first.Value, second.Value);
        return first.Misreading?.ToString() ?? second.Misreading?.ToString();
    }
}
