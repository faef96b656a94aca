using Hornbook.Bench.Programmes;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>One demonstration of a show.</summary>
internal sealed record ProgrammeItemReport(
    int PlaceCount, string Name, string Act, double GainRatio, double DistanceM, string Heard, IReadOnlyList<string> ToDo, IReadOnlyList<string> GivenUp)
{
    internal static ProgrammeItemReport Of(int place, ProgrammeItem item) => new(
        place,
        item.Demonstration.Name,
        item.Demonstration.Act,
        item.Bench.Detection.Amplifier.Gain,
        (item.Bench.Receiver.Pose.Position - item.Bench.Source.Pose.Position).Length,
        item.Prediction.Heard,
        item.ToDo,
        item.GivenUp);

    internal void Describe(TextPage page)
    {
        page.Heading($"{PlaceCount}. {Name}: {Act}");
        foreach (string change in ToDo)
        {
            page.Paragraph($"- {change}", 2);
        }

        page.Paragraph(Heard);
        foreach (string given in GivenUp)
        {
            page.Paragraph($"Given up: {given}", 2);
        }
    }
}
