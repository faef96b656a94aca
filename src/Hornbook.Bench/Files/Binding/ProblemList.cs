using Hornbook.Bench.Files.Quantities;
using Hornbook.Bench.Files.Syntax;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Gathers everything that is wrong, each with its place.</summary>
internal sealed class ProblemList
{
    private readonly List<PlacedProblem> _found = [];

    /// <summary>What was found so far.</summary>
    internal IReadOnlyList<PlacedProblem> Found => _found;

    /// <summary>Adds one.</summary>
    internal void Add(Place place, string read, string fits, string type) => Add(place, new Misreading(read, fits, type));

    /// <summary>Adds one.</summary>
    internal void Add(Place place, Misreading what) => _found.Add(new PlacedProblem(place, what));
}
