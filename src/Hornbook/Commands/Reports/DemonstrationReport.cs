using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;
using Hornbook.Physics.Detection;

namespace Hornbook.Commands.Reports;

/// <summary>What is predicted of a demonstration.</summary>
internal sealed record DemonstrationReport(
    string Name, string Heard, EvaluationReport Evaluation, IReadOnlyList<LimitReport> Limits, IReadOnlyList<PointReport> Points)
{
    private const int RowsShown = 19;

    internal static DemonstrationReport Of(Prediction prediction) => new(
        prediction.Demonstration.Name,
        prediction.Heard,
        EvaluationReport.Of(prediction.Evaluation),
        [.. prediction.Limits.Select(l => new LimitReport(l.Kind, l.Sentence))],
        [.. prediction.Curve.Points.Select(p => new PointReport(prediction.Curve.Abscissa, p))]);

    internal void Describe(TextPage page)
    {
        page.Heading($"{Name}: {Evaluation.Title}");
        page.Paragraph(Heard);
        page.Gap();
        Evaluation.Describe(page);
        page.Gap();
        foreach (LimitReport limit in Limits)
        {
            page.Paragraph($"- {limit.Sentence}", 2);
        }

        page.Gap();
        IReadOnlyList<PointReport> shown = Thinned.Of(Points, RowsShown);
        page.Table(Table(shown));
        if (shown.Count < Points.Count)
        {
            page.Paragraph($"{shown.Count} of {Points.Count} points; --csv FILE has them all.");
        }
    }

    private TextTable Table(IReadOnlyList<PointReport> shown)
    {
        TextTable table = new(Changed(), ">link [dB]", ">[dBm]", ">amplifier", ">tone [Hz]", "band [Hz]", "note", "");
        foreach (PointReport point in shown)
        {
            string band = string.Create(CultureInfo.InvariantCulture, $"{point.LowestToneHz:F0} to {point.HighestToneHz:F0}");
            table.Row(
                At(point), Show.Db(point.LinkDb, string.Empty), Show.Db(point.ReceivedDbm, string.Empty), Show.Si(point.AmplifierV, "V"),
                Show.Fixed(point.ToneHz, 0), band, point.Note, Remark(point));
        }

        return table;
    }

    private string Changed() => Points[0] switch
    {
        { TurnDeg: not null } => ">turn [deg]",
        { RollDeg: not null } => ">roll [deg]",
        { DistanceM: not null } => ">at [cm]",
        _ => "antenna",
    };

    private static string At(PointReport point) => point switch
    {
        { TurnDeg: { } turn } => Show.Fixed(turn, 1),
        { RollDeg: { } roll } => Show.Fixed(roll, 1),
        { DistanceM: { } distance } => Show.Fixed(100.0 * distance, 1),
        _ => point.Antenna ?? string.Empty,
    };

    private static string Remark(ReadingReport reading) => reading switch
    {
        { State: ToneState.Clipped } => "clipped",
        { State: ToneState.Drowned } => "in noise",
        { Trust: TrustLevel.Outside } => "a guide",
        { Trust: TrustLevel.Rough } => "rough",
        _ => string.Empty,
    };
}
