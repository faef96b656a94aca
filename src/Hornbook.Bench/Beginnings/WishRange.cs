using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Beginnings;

/// <summary>What the answer to a question may be, both ends included.</summary>
/// <param name="Quantity">What it measures.</param>
/// <param name="Lowest">As text with its unit.</param>
/// <param name="Highest">As text with its unit.</param>
/// <param name="Example">An answer that fits.</param>
internal sealed record WishRange(Quantity Quantity, string Lowest, string Highest, string Example)
{
    internal bool Contains(double answer) => answer >= Si(Lowest) && answer <= Si(Highest);

    internal string? Read(string text, out double answer)
    {
        QuantityReading reading = QuantityText.Read(text, Quantity, Example);
        answer = reading.Value;
        return reading.Misreading?.ToString() ?? (Contains(answer) ? null : $"\"{text}\" is out of range; from {Lowest} to {Highest} fits");
    }

    private double Si(string text) => QuantityText.Read(text, Quantity).Value;
}
