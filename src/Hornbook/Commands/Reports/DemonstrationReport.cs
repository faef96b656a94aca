using System.Globalization;
using System.Text.Json.Serialization;
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

    private string _act = string.Empty;
    private string _changed = string.Empty;

    /// <summary>What a presenter should know; null where it was not asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public LessonReport? Lesson { get; private init; }

    internal static DemonstrationReport Of(Prediction prediction, Lesson? lesson) => new(
        prediction.Demonstration.Name,
        prediction.Heard,
        EvaluationReport.Of(prediction.Evaluation),
        [.. prediction.Limits.Select(l => new LimitReport(l.Kind, l.Sentence))],
        [.. prediction.Curve.Points.Select(p => new PointReport(prediction.Curve.Abscissa, p))])
    {
        _act = prediction.Demonstration.Act,
        _changed = Heading(prediction.Curve.Abscissa),
        Lesson = LessonReport.Of(lesson),
    };

    internal void Describe(TextPage page)
    {
        page.Heading($"{Name}: {_act}");
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

        Lesson?.Describe(page);
    }

    private TextTable Table(IReadOnlyList<PointReport> shown)
    {
        TextTable table = new(_changed, ">link [dB]", ">[dBm]", ">amplifier", ">tone [Hz]", "band [Hz]", "note", "");
        foreach (PointReport point in shown)
        {
            string band = string.Create(CultureInfo.InvariantCulture, $"{point.LowestToneHz:F0} to {point.HighestToneHz:F0}");
            table.Row(
                point.At, Show.Db(point.LinkDb, string.Empty), Show.Db(point.ReceivedDbm, string.Empty), Show.Si(point.AmplifierV, "V"),
                Show.Fixed(point.ToneHz, 0), band, point.Note, Remark(point));
        }

        return table;
    }

    // Distances have always stood under "at".
    private static string Heading(Abscissa changed) => changed.Unit.Length == 0
        ? changed.Name
        : $">{(changed == Abscissa.Distance ? "at" : changed.Name)} [{changed.Unit}]";

    private static string Remark(ReadingReport reading) => reading switch
    {
        { State: ToneState.Clipped } => "clipped",
        { State: ToneState.Drowned } => "in noise",
        { Trust: TrustLevel.Outside } => "a guide",
        { Trust: TrustLevel.Rough } => "rough",
        _ => string.Empty,
    };
}
