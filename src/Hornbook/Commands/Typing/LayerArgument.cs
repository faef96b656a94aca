using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.RegularExpressions;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Typing;

/// <summary>The layers of a panel, each as one text: "plywood 6 mm", or "2.6-0.02j 6 mm" with the permittivity itself.</summary>
internal static partial class LayerArgument
{
    private const string Example = "plywood 6 mm";

    internal static Argument<Layer[]> Create()
    {
        Argument<Layer[]> layers = new("LAYER")
        {
            Description = "A material and its thickness, \"plywood 6 mm\", or its permittivity, \"2.6-0.02j 6 mm\"; several in the order in which the wave meets them.",
            HelpName = "LAYER",
            Arity = ArgumentArity.OneOrMore,
            CustomParser = Read,
        };
        layers.CompletionSources.Add([.. Dielectrics.All.Select(material => material.Name)]);
        return layers;
    }

    /// <summary>An option that states one layer and may be left out.</summary>
    internal static Option<Layer?> CreateOption(string name, string example, string description)
    {
        Option<Layer?> option = new(name)
        {
            Description = description,
            HelpName = $"\"{example}\"",
            CustomParser = result =>
            {
                if (Read(result.Tokens[0].Value, out Layer? layer) is { } wrong)
                {
                    result.AddError($"{name}: {wrong}");
                }

                return layer;
            },
        };
        option.CompletionSources.Add([.. Dielectrics.All.Select(material => material.Name)]);
        return option;
    }

    private static Layer[] Read(ArgumentResult result)
    {
        List<Layer> layers = [];
        foreach (Token token in result.Tokens)
        {
            if (Read(token.Value, out Layer? layer) is { } wrong)
            {
                result.AddError($"layer: {wrong}");
            }
            else
            {
                layers.Add(layer!);
            }
        }

        return [.. layers];
    }

    private static string? Read(string text, out Layer? layer)
    {
        layer = null;
        Match parts = MaterialAndThickness().Match(text);
        if (!parts.Success)
        {
            return $"\"{text}\" is not a material and a thickness; type both, like \"{Example}\"";
        }

        string name = parts.Groups["material"].Value;
        if ((Dielectrics.Find(name) ?? Permittivity(name)) is not { } material)
        {
            return $"\"{name}\" is not known; type one of {string.Join(", ", Dielectrics.All.Select(m => m.Name))}, or a permittivity like 2.6 or 2.6-0.02j";
        }

        string? wrong = Span.Layer.Read(parts.Groups["thickness"].Value, "6 mm", out double thickness);
        layer = wrong is null ? new Layer(material, thickness) : null;
        return wrong;
    }

    private static LaboratoryDielectric? Permittivity(string text)
    {
        Match number = ComplexNumber().Match(text);
        if (!number.Success)
        {
            return null;
        }

        double real = double.Parse(number.Groups["real"].Value, CultureInfo.InvariantCulture);
        double loss = number.Groups["loss"].Success ? double.Parse(number.Groups["loss"].Value, CultureInfo.InvariantCulture) : 0.0;
        return real is >= 1.0 and <= 1e4 && loss <= 1e4 ? new LaboratoryDielectric(text, real, loss / real) : null;
    }

    [GeneratedRegex(@"^\s*(?<material>\S.*?)\s+(?<thickness>[0-9.]+\s*\S+)\s*$")]
    private static partial Regex MaterialAndThickness();

    [GeneratedRegex(@"^(?<real>[0-9]+(\.[0-9]+)?)(-(j(?<loss>[0-9]+(\.[0-9]+)?)|(?<loss>[0-9]+(\.[0-9]+)?)j))?$", RegexOptions.ExplicitCapture)]
    private static partial Regex ComplexNumber();
}
