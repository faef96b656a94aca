using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>The gain that the bench will show.</summary>
internal sealed record AntennaChangeReport(BenchEnd Changed, IReadOnlyList<AntennaStepReport> Steps) : EvaluationReport
{
    internal static AntennaChangeReport Of(AntennaChangeEvaluation e) => new(e.Changed, [.. e.Steps.Select(AntennaStepReport.Of)]);

    /// <inheritdoc/>
    internal override void Describe(TextPage page)
    {
        TextTable table = new("antenna", ">gain [dBi]", ">realised [dBi]", ">received [dB]", ">promised [dB]", ">error [dB]");
        foreach (AntennaStepReport step in Steps)
        {
            table.Row(
                step.Antenna, Show.Fixed(step.GainDbi, 1), Show.Fixed(step.RealisedGainDbi, 1),
                Show.Fixed(step.ReceivedDb, 1), Show.Fixed(step.PromisedDb, 1), Show.Fixed(step.ErrorDb, 1));
        }

        page.Table(table);
        page.Paragraph("Received: over the first antenna, as this bench will show it. Promised: by the gains, far away.");
    }
}
