using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What a curve shows, number by number, beside the textbook law.</summary>
internal sealed record LawReport(string Law, IReadOnlyList<ComparisonReport> Comparisons) : EvaluationReport
{
    internal static LawReport Of(LawEvaluation e) => new(e.LawName, [.. e.Comparisons.Select(ComparisonReport.Of)]);

    /// <inheritdoc/>
    internal override void Describe(TextPage page)
    {
        TextTable table = new(string.Empty, ">on this bench", ">in books", string.Empty);
        foreach (ComparisonReport comparison in Comparisons)
        {
            comparison.AddTo(table);
        }

        page.Table(table);
    }
}
