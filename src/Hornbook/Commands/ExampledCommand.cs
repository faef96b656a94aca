using System.CommandLine;

namespace Hornbook.Commands;

/// <summary>A command whose help shows how it is typed.</summary>
internal sealed class ExampledCommand(string name, string description) : Command(name, description)
{
    /// <summary>Lines to type, each with what it does.</summary>
    internal required IReadOnlyList<(string Line, string Does)> Examples { get; init; }
}
