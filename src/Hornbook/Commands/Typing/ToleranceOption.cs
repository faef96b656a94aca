using System.CommandLine;

namespace Hornbook.Commands.Typing;

/// <summary>How exactly a horn is made.</summary>
internal static class ToleranceOption
{
    /// <summary>What a careful hand keeps with shears and a soldering iron (common practice, no source) [m].</summary>
    internal const double Default = 1e-3;

    internal static Option<double?> Create() => QuantityOption.Create(
        "--tolerance", Span.Tolerance, "1 mm", "How far each dimension may be off when it is built; 1 mm unless given.");

    internal static double Of(ParseResult typed, Option<double?> option) => typed.GetValue(option) ?? Default;
}
