using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>The polarisation law that the bench will show.</summary>
internal sealed record PolarisationReport(double StrongestAtDeg, double WeakestAtDeg, double DepthDb, double LawErrorDb) : EvaluationReport
{
    internal static PolarisationReport Of(PolarisationEvaluation e) =>
        new(e.StrongestAt * 180.0 / Math.PI, e.WeakestAt * 180.0 / Math.PI, e.DepthDb, e.LawErrorDb);

    /// <inheritdoc/>
    internal override void Describe(TextPage page)
    {
        TextTable table = new(string.Empty, string.Empty, string.Empty);
        table.Row("Strongest at", Show.Fixed(StrongestAtDeg, 1, "deg"), "off the present roll");
        table.Row("Weakest at", Show.Fixed(WeakestAtDeg, 1, "deg"), DepthDb < 100.0 ? $"{Show.Db(DepthDb)} below the strongest" : "where nothing is left");
        table.Row("Off cos²", Show.FineDb(LawErrorDb), "at most, where the law asks for more than a hundredth");
        page.Table(table);
    }
}
