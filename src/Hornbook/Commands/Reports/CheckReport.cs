using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What was found on a bench, worst first.</summary>
internal sealed record CheckReport(string Bench, int SpoilsCount, int WeakensCount, int NotesCount, IReadOnlyList<FindingReport> Findings, IReadOnlyList<BenchPanelReport> Panels) : IReport
{
    internal static CheckReport Of(BenchPlan plan, IReadOnlyList<Finding> findings)
    {
        FindingReport[] sorted = [.. findings.OrderBy(f => f.Severity).Select(FindingReport.Of)];
        int Count(Severity severity) => sorted.Count(f => f.Severity == severity);
        return new CheckReport(
            plan.Title, Count(Severity.Spoils), Count(Severity.Weakens), Count(Severity.Note), sorted, [.. plan.Panels.Select(BenchPanelReport.Of)]);
    }

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"{Bench}: {Summary()}");
        foreach (FindingReport finding in Findings)
        {
            page.Gap();
            TextTable table = new(string.Empty, string.Empty);
            table.Row(Word(finding.Severity), finding.Wrong);
            table.Row(string.Empty, finding.Consequence);
            if (finding.Move is not null)
            {
                table.Row(string.Empty, $"→ {finding.Move}");
            }

            page.Table(table);
        }

        DescribePanels(page);
    }

    private void DescribePanels(TextPage page)
    {
        if (Panels.Count == 0)
        {
            return;
        }

        page.Heading("Panels at hand");
        page.Gap();
        TextTable table = new(string.Empty, string.Empty);
        foreach (BenchPanelReport panel in Panels)
        {
            table.Row(panel.Name, $"{panel.What}; {panel.Where}");
        }

        page.Table(table);
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Spoils => "SPOILS ",
        Severity.Weakens => "weakens",
        _ => "note   ",
    };

    private string Summary() => (SpoilsCount, WeakensCount) switch
    {
        (0, 0) => "nothing stands in the way",
        (0, _) => $"nothing spoils the show, {WeakensCount} weaken{(WeakensCount == 1 ? "s" : string.Empty)} it",
        (1, _) => "one thing spoils the show",
        _ => $"{SpoilsCount} things spoil the show",
    };
}
