using System.CommandLine;
using Hornbook.Physics.Media;

namespace Hornbook.Commands.Typing;

/// <summary>What walls are made of, by name.</summary>
internal static class WallsOption
{
    internal static Option<Conductor> Create()
    {
        Option<Conductor> option = new("--walls")
        {
            Description = "What the walls are made of.",
            HelpName = "METAL",
            DefaultValueFactory = _ => Conductor.Brass,
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                if (Conductors.Find(text) is { } metal)
                {
                    return metal;
                }

                result.AddError($"--walls: \"{text}\" is not known; type one of {string.Join(", ", Conductors.All.Select(m => m.Name))}");
                return Conductor.Brass;
            },
        };
        option.CompletionSources.Add([.. Conductors.All.Select(m => m.Name)]);
        return option;
    }
}
