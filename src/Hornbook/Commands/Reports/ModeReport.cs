namespace Hornbook.Commands.Reports;

/// <summary>A mode and where it begins to travel.</summary>
internal sealed record ModeReport(string Mode, double CutoffHz);
