using Hornbook.Commands.Printing;

namespace Hornbook.Commands;

/// <summary>What a command gives back: what it found out, and whether that is good.</summary>
/// <param name="Report">What it found out.</param>
/// <param name="Code">Fine, or bad news.</param>
internal sealed record Outcome(IReport Report, ExitCode Code = ExitCode.Fine);
