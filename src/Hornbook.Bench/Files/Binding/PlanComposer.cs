using Hornbook.Bench.Files.Format;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes the plan from a file in which nothing is wrong.</summary>
internal static class PlanComposer
{
    /// <summary>The plan.</summary>
    internal static BenchPlan Compose(BoundTable file) => new()
    {
        Title = file.Text("title"),
        Frequency = file.Number("frequency"),
        Table = Table(file.Table("table")!),
        Antennas = [.. file.List("antennas").Select(item => new NamedAntenna(item.Name, Shape((BoundTable)item.Value)))],
        Panels = [.. file.List("panels").Select(item => PanelComposer.Compose(item.Name, (BoundTable)item.Value, file.Number("frequency")))],
        Source = Source(file.Table("source")!),
        Receiver = new ReceiverEnd(file.Table("receiver")!.Text("antenna"), PoseComposer.Compose(file.Table("receiver")!)),
        Detection = DetectionComposer.Compose(file),
        ExposureLimit = file.Table("exposure")?.TextOrNull("limit") ?? "strictest",
        Demonstrations = [.. file.List("demonstrations").Select(item => DemonstrationComposer.Compose((BoundTable)item.Value))],
    };

    private static TableTop Table(BoundTable table)
    {
        TableTop top = new(table.Number("length"), table.Number("width"));
        return table.Has("material") ? top.Of(new LayeredSheet(SheetComposer.Layer(table))) : top;
    }

    private static AntennaShape Shape(BoundTable antenna)
    {
        (double width, double height) = GuideSize.Of(antenna);
        RectangularGuide guide = new(width, height);
        Conductor walls = Conductors.Find(antenna.TextOrNull("walls") ?? Conductor.Brass.Name)!;
        AntennaShape shape = antenna.Word == AntennaFormat.OpenEnd
            ? new OpenGuide(guide, walls)
            : new Horn(guide, Mouth(antenna, "mouth_width", width), Mouth(antenna, "mouth_height", height), antenna.Number("length"), walls);
        return antenna.Has("reflection") ? shape with { MeasuredReflection = antenna.Number("reflection") } : shape;
    }

    /// <summary>A mouth dimension; the guide's own where it does not flare. A mouth typed as large as the guide may miss it by the last bit.</summary>
    private static double Mouth(BoundTable antenna, string key, double guide) => Math.Max(antenna.Number(key, guide), guide);

    private static SourceEnd Source(BoundTable source)
    {
        double power = source.Number("power");
        return new SourceEnd(source.Text("antenna"), PoseComposer.Compose(source), power, source.Number("worst_case_power", power))
        {
            IsWorstCaseStated = source.Has("worst_case_power"),
        };
    }
}
