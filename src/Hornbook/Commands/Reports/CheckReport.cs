using Hornbook.Bench.Findings;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What was found on a bench, worst first.</summary>
internal sealed record CheckReport(string Bench, int SpoilsCount, int WeakensCount, int NotesCount, IReadOnlyList<FindingReport> Findings) : IReport
{
    internal static CheckReport Of(string bench, IReadOnlyList<Finding> findings)
    {
        FindingReport[] sorted = [.. findings.OrderBy(f => f.Severity).Select(FindingReport.Of)];
        int Count(Severity severity) => sorted.Count(f => f.Severity == severity);
        return new CheckReport(bench, Count(Severity.Spoils), Count(Severity.Weakens), Count(Severity.Note), sorted);
    }

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"{Bench}: {Summary()}");
        foreach (FindingReport finding in Findings)
        {
            page.Gap();
            page.Paragraph($"{Word(finding.Severity)}: {finding.Wrong}");
            page.Paragraph($"    {finding.Consequence}", 4);
            if (finding.Move is not null)
            {
                page.Paragraph($"    → {finding.Move}", 6);
            }
        }
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Spoils => "SPOILS THE SHOW",
        Severity.Weakens => "Weakens it",
        _ => "Note",
    };

    private string Summary() => (SpoilsCount, WeakensCount) switch
    {
        (0, 0) => "nothing stands in the way",
        (0, _) => $"nothing spoils the show, {WeakensCount} weaken{(WeakensCount == 1 ? "s" : string.Empty)} it",
        (1, _) => "one thing spoils the show",
        _ => $"{SpoilsCount} things spoil the show",
    };
}
