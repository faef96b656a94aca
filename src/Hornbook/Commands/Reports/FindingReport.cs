using Hornbook.Bench.Findings;

namespace Hornbook.Commands.Reports;

/// <summary>A finding for programs.</summary>
internal sealed record FindingReport(
    Severity Severity, string Id, string Wrong, string Consequence, string? Move, string? Key, string? NewText, IReadOnlyList<MendedKey> Also)
{
    internal static FindingReport Of(Finding finding) => new(
        finding.Severity, finding.Id, finding.Wrong, finding.Consequence, finding.Mend?.Move, finding.Mend?.Key, finding.Mend?.NewText, finding.Mend?.Also ?? []);
}
