namespace Hornbook.Bench.Explanations;

/// <summary>Why a number of the bench is what it is.</summary>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Meaning">What it means, one or two sentences.</param>
/// <param name="Formula">How it is computed, in symbols.</param>
/// <param name="Here">The same with the values of this bench; one line each.</param>
/// <param name="Symbols">What the symbols are, and what they are here.</param>
/// <param name="Holds">Where it holds.</param>
/// <param name="Certainty">How sure it is.</param>
/// <param name="Sources">Keys of docs/sources.md; empty where it is our own estimate or a definition.</param>
public sealed record Explanation(
    string Title,
    string Meaning,
    string Formula,
    IReadOnlyList<string> Here,
    IReadOnlyList<ExplainedSymbol> Symbols,
    string Holds,
    string Certainty,
    IReadOnlyList<string> Sources);

/// <summary>A symbol of a formula.</summary>
/// <param name="Symbol">As it stands in the formula.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Here">What it is on this bench, with its unit.</param>
public sealed record ExplainedSymbol(string Symbol, string Meaning, string Here);
