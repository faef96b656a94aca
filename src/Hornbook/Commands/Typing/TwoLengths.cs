namespace Hornbook.Commands.Typing;

/// <summary>Two lengths as one text, "22.86 mm x 10.16 mm".</summary>
internal static class TwoLengths
{
    /// <summary>Reads both.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="first">What the first may be.</param>
    /// <param name="second">What the second may be.</param>
    /// <param name="lengths">Both [m]; of no meaning where there is an error.</param>
    /// <returns>What is wrong and what would fit; null where nothing is.</returns>
    internal static string? Read(string text, Span first, Span second, out (double First, double Second) lengths)
    {
        lengths = default;
        string[] parts = text.Replace('×', 'x').Split('x', StringSplitOptions.TrimEntries);
        if (parts.Length != 2)
        {
            return $"\"{text}\" is not two lengths; type both with their units, like \"40 cm x 60 cm\"";
        }

        string? wrong = first.Read(parts[0], "40 cm", out double one) ?? second.Read(parts[1], "60 cm", out _);
        second.Read(parts[1], "60 cm", out double other);
        lengths = (one, other);
        return wrong;
    }
}
