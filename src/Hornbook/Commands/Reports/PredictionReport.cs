using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What a bench will read as it stands, and the demonstrations asked for.</summary>
internal sealed class PredictionReport(Scene scene, IReadOnlyList<Prediction> predictions, bool explained) : ReadingReport(scene.Read()), IReport
{
    public string Bench { get; } = scene.Plan.Title;

    public double FrequencyHz { get; } = scene.Plan.Frequency;

    public double SourcePowerW { get; } = scene.Plan.Source.Power;

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
            page.Table(table);
        }

        foreach (DemonstrationReport demonstration in Demonstrations)
        {
            demonstration.Describe(page);
        }
    }
}
