using System.Text.Json.Serialization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What a bench will read as it stands, and the demonstrations asked for.</summary>
internal sealed class PredictionReport(Scene scene, IReadOnlyList<Prediction> predictions, bool explained, bool exchanged) : ReadingReport(scene.Read()), IReport
{
    public string Bench { get; } = scene.Plan.Title;

    public double FrequencyHz { get; } = scene.Plan.Frequency;

    public double SourcePowerW { get; } = scene.Plan.Source.Power;

    /// <summary>The link with the two ends exchanged over the link as it is, where it was asked for: nature makes no difference.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ReciprocityGapDb { get; } =
        exchanged ? scene.ReciprocityGapDb(scene.Plan.Source, scene.Plan.Receiver, scene.Plan.Panels) : null;

    public IReadOnlyList<DemonstrationReport> Demonstrations { get; } =
    [
        .. predictions.Select(p => DemonstrationReport.Of(p, explained ? p.Demonstration.Lesson(scene.Plan) : null)),
    ];

    /// <inheritdoc/>
    public void Describe(TextPage page)
    {
        if (Demonstrations.Count == 0)
        {
            page.Heading($"{Bench}, {Show.Gigahertz(FrequencyHz)}, {Show.Si(SourcePowerW, "W")}, as it stands");
            page.Gap();
            TextTable table = new(string.Empty, ">", string.Empty);
            AddTo(table);
            if (ReciprocityGapDb is { } gap)
            {
                table.Row("Exchanged", Show.FineDb(gap), "is what exchanging source and receiver changes; nature makes no difference, so this is a sign of the error");
            }

            page.Table(table);
        }

        foreach (DemonstrationReport demonstration in Demonstrations)
        {
            demonstration.Describe(page);
        }
    }
}
