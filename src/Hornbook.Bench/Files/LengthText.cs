using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Files;

/// <summary>Sizes as a bench file states them: in millimetres and in quotes.</summary>
internal static class LengthText
{
    // A micrometre: finer than anything that is cut, and it keeps the sizes of guides that are defined in inches.
    private static readonly Quantity Size = Quantity.Length with { Resolution = 1e-6 };
    private static readonly Unit Millimetre = Size.FindUnit("mm")!;

    internal static string Of(double length) => $"\"{Typed(length)}\"";

    /// <summary>Without the quotes, as it is given to one key of a file.</summary>
    internal static string Typed(double length) => QuantityText.Write(length, Millimetre, Size);
}
