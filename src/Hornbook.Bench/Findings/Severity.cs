namespace Hornbook.Bench.Findings;

/// <summary>How much a finding matters to the show, worst first.</summary>
public enum Severity
{
    /// <summary>The demonstration fails, or must not be given like this.</summary>
    Spoils,

    /// <summary>It works, but worse than it could, or it shows something else than it claims.</summary>
    Weakens,

    /// <summary>Good to know.</summary>
    Note,
}
