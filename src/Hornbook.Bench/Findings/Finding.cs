namespace Hornbook.Bench.Findings;

/// <summary>Something that a demonstrator should know before the show.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Id">What sort of finding, for programs: lower-case words joined by hyphens, such as "tone-clipped".</param>
/// <param name="Wrong">What is wrong, one sentence with numbers.</param>
/// <param name="Consequence">What comes of it, one sentence.</param>
/// <param name="Mend">The one move that would mend it; null where nothing needs mending.</param>
public sealed record Finding(Severity Severity, string Id, string Wrong, string Consequence, Mend? Mend);
