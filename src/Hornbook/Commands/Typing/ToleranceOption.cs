using System.CommandLine;
using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Commands.Typing;

/// <summary>How exactly a horn is made.</summary>
internal static class ToleranceOption
{
    /// <summary>What a careful hand keeps with shears and a soldering iron (common practice, no source) [m].</summary>
    internal const double Default = 1e-3;

    internal static Option<double?> Create()
    {
        Option<double?> option = QuantityOption.Create("--tolerance", Quantity.Length, "1 mm", "How far each dimension may be off when it is built; 1 mm unless given.");
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && QuantityText.Read(result.Tokens[0].Value, Quantity.Length).Value is < 0.0 or > 0.01)
            {
                result.AddError("--tolerance: from 0 to 10 mm");
            }
        });
        return option;
    }

    internal static double Of(ParseResult typed, Option<double?> option) => typed.GetValue(option) ?? Default;
}
