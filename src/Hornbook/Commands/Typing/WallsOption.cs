using System.CommandLine;
using System.CommandLine.Parsing;
using Hornbook.Physics.Media;

namespace Hornbook.Commands.Typing;

/// <summary>What walls are made of, by name.</summary>
internal static class WallsOption
{
    internal static Option<Conductor?> Create()
    {
        Option<Conductor?> option = new("--walls") { Description = "What the walls are made of; brass unless given.", HelpName = "METAL", CustomParser = Read };
        option.CompletionSources.Add([.. Conductors.All.Select(m => m.Name)]);
        return option;
    }

    internal static Conductor Of(ParseResult typed, Option<Conductor?> option) => typed.GetValue(option) ?? Conductor.Brass;

    private static Conductor? Read(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        Conductor? metal = Conductors.Find(text);
        if (metal is null)
        {
            result.AddError($"--walls: \"{text}\" is not known; type one of {string.Join(", ", Conductors.All.Select(m => m.Name))}");
        }

        return metal;
    }
}
