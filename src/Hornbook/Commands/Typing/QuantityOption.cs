using System.CommandLine;
using System.CommandLine.Parsing;
using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Commands.Typing;

/// <summary>Options whose value is a number with a unit, read as in a bench file.</summary>
internal static class QuantityOption
{
    /// <summary>Gain over an isotropic radiator [-].</summary>
    internal static Quantity Gain { get; } = new("gain", [new Unit("dBi", 1.0, UnitScale.PowerLevel, "dB")]);

    /// <summary>An option that may be left out.</summary>
    /// <param name="name">As typed, "--length".</param>
    /// <param name="quantity">What it measures.</param>
    /// <param name="example">A value that fits, "130 mm".</param>
    /// <param name="description">For the help.</param>
    internal static Option<double?> Create(string name, Quantity quantity, string example, string description) => new(name)
    {
        Description = description,
        HelpName = $"\"{example}\"",
        CustomParser = result => Read(result, name, quantity, example),
    };

    private static double? Read(ArgumentResult result, string name, Quantity quantity, string example)
    {
        QuantityReading reading = QuantityText.Read(result.Tokens[0].Value, quantity, example);
        if (reading.Misreading is not { } misreading)
        {
            return reading.Value;
        }

        result.AddError($"{name}: {misreading}");
        return null;
    }
}
