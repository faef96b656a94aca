using Hornbook.Bench.Programmes;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>A show as proposed.</summary>
internal sealed record ProgrammeReport(
    string Bench, int ChangesCount, IReadOnlyList<ProgrammeItemReport> Items, IReadOnlyList<LeftOutReport> LeftOut) : IReport
{
    internal static ProgrammeReport Of(string title, Programme programme) => new(
        title,
        programme.Changes,
        [.. programme.Items.Select((item, i) => ProgrammeItemReport.Of(i + 1, item))],
        [.. programme.Left.Select(left => new LeftOutReport(left.Demonstration.Name, left.Why))]);

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        page.Heading($"{Bench}: a show of {Items.Count}, with {ChangesCount} change{(ChangesCount == 1 ? string.Empty : "s")}");
        foreach (ProgrammeItemReport item in Items)
        {
            page.Gap();
            item.Describe(page);
        }

        foreach (LeftOutReport left in LeftOut)
        {
            page.Gap();
            page.Paragraph($"Left out: {left.Why}");
        }
    }
}

/// <summary>A demonstration that cannot be shown.</summary>
internal sealed record LeftOutReport(string Name, string Why);
