using System.CommandLine;
using System.CommandLine.Parsing;
using Hornbook.Physics.Guides;

namespace Hornbook.Commands.Typing;

/// <summary>A guide, by its standard name or by its inside dimensions.</summary>
internal static class GuideOption
{
    internal const string Example = "WR-90";

    /// <summary>An option for a guide.</summary>
    internal static Option<RectangularGuide?> Create(string description)
    {
        Option<RectangularGuide?> option = new("--guide") { Description = description, HelpName = Example, CustomParser = Read };
        option.CompletionSources.Add([.. StandardGuides.All.Select(g => g.Name)]);
        return option;
    }

    /// <summary>Reads a guide; says what is wrong in the result.</summary>
    internal static RectangularGuide? Read(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (StandardGuides.Find(text) is { } standard)
        {
            return standard.Guide;
        }

        if (!text.Contains('x', StringComparison.Ordinal) && !text.Contains('×', StringComparison.Ordinal))
        {
            result.AddError($"guide: {Unknown(text)}");
            return null;
        }

        if (TwoLengths.Read(text, Span.GuideWidth, Span.GuideHeight, out (double First, double Second) size) is not { } wrong)
        {
            return new RectangularGuide(size.First, size.Second);
        }

        result.AddError($"guide: {wrong}");
        return null;
    }

    private static string Unknown(string text) =>
        $"\"{text}\" is no standard guide; type one of {string.Join(", ", StandardGuides.All.Select(g => g.Name))}, or inside dimensions like \"22.86 mm x 10.16 mm\"";
}
