using System.CommandLine;

namespace Hornbook.Commands.Typing;

/// <summary>Options whose value is a number with a unit, read as in a bench file.</summary>
internal static class QuantityOption
{
    /// <summary>An option that may be left out.</summary>
    /// <param name="name">As typed, "--length".</param>
    /// <param name="span">What it may be.</param>
    /// <param name="example">A value that fits, "130 mm".</param>
    /// <param name="description">For the help.</param>
    internal static Option<double?> Create(string name, Span span, string example, string description) => new(name)
    {
        Description = description,
        HelpName = $"\"{example}\"",
        CustomParser = result =>
        {
            if (span.Read(result.Tokens[0].Value, example, out double value) is not { } wrong)
            {
                return value;
            }

            result.AddError($"{name}: {wrong}");
            return null;
        },
    };
}
