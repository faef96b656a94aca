using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Commands.Typing;

/// <summary>What a typed quantity may be, both ends included, as a bench file would allow it.</summary>
/// <param name="Quantity">What it measures.</param>
/// <param name="Lowest">As text with its unit.</param>
/// <param name="Highest">As text with its unit.</param>
internal sealed record Span(Quantity Quantity, string Lowest, string Highest)
{
    /// <summary>Frequencies.</summary>
    internal static Span Frequency { get; } = new(Quantity.Frequency, "1 GHz", "300 GHz");

    /// <summary>Broad inner wall of a guide.</summary>
    internal static Span GuideWidth { get; } = new(Quantity.Length, "0.5 mm", "50 cm");

    /// <summary>Narrow inner wall of a guide.</summary>
    internal static Span GuideHeight { get; } = new(Quantity.Length, "0.2 mm", "50 cm");

    /// <summary>A side of a mouth; how many wavelengths it has is asked when the frequency is known.</summary>
    internal static Span Mouth { get; } = new(Quantity.Length, "0.2 mm", "10 m");

    /// <summary>Length of a horn.</summary>
    internal static Span Length { get; } = new(Quantity.Length, "1 mm", "5 m");

    /// <summary>How far a dimension may be off.</summary>
    internal static Span Tolerance { get; } = new(Quantity.Length, "0 mm", "10 mm");

    /// <summary>The scale to which a horn is cut.</summary>
    internal static Span Step { get; } = new(Quantity.Length, "0.01 mm", "5 mm");

    /// <summary>A strip left for joining.</summary>
    internal static Span Seam { get; } = new(Quantity.Length, "0 mm", "10 cm");

    /// <summary>A side of a sheet of metal.</summary>
    internal static Span Sheet { get; } = new(Quantity.Length, "1 cm", "10 m");

    /// <summary>One layer of a panel.</summary>
    internal static Span Layer { get; } = new(Quantity.Length, "0.01 mm", "1 m");

    /// <summary>Period of a grid.</summary>
    internal static Span GridPeriod { get; } = new(Quantity.Length, "0.01 mm", "20 cm");

    /// <summary>Full width of a beam.</summary>
    internal static Span Beam { get; } = new(Quantity.Angle, "0.1 deg", "180 deg");

    /// <summary>Gain over an isotropic radiator [-].</summary>
    internal static Span Gain { get; } = new(new Quantity("gain", [new Unit("dBi", 1.0, UnitScale.PowerLevel, "dB")]), "0 dBi", "60 dBi");

    /// <summary>Reads a text.</summary>
    /// <param name="text">A number with a unit.</param>
    /// <param name="example">A text that fits.</param>
    /// <param name="value">In SI units; 0 where there is an error.</param>
    /// <returns>What is wrong and what would fit; null where nothing is.</returns>
    internal string? Read(string text, string example, out double value)
    {
        QuantityReading reading = QuantityText.Read(text, Quantity, example);
        value = reading.Value;
        if (reading.Misreading is { } misreading)
        {
            return misreading.ToString();
        }

        bool fits = value >= Si(Lowest) && value <= Si(Highest);
        return fits ? null : $"\"{text}\" is out of range; from {Lowest} to {Highest}";
    }

    private double Si(string text) => QuantityText.Read(text, Quantity).Value;
}
