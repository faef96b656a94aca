using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Physics.Panels.Sheets;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

/// <summary>A bench as a demonstrator stands it for waves: the horn, a plate at a place, and an open guide behind it.</summary>
internal static class WaveBench
{
    internal const double Degree = Math.PI / 180.0;

    internal static double Wavelength => Constants.SpeedOfLight / GoodBench.Plan.Frequency;

    /// <summary>Source at the origin of the line, the panel lying aside where it will be put in, the receiver looking back.</summary>
    internal static BenchPlan With(PanelSurface surface, double panelAt, double receiverAt, Pose? pose = null) => GoodBench.Plan with
    {
        Antennas = [new NamedAntenna("horn", new Horn(StandardGuides.Find("WR-90")!.Guide, 0.094, 0.079, 0.066, Conductor.Brass)), .. GoodBench.Plan.Antennas.Skip(1)],
        Panels = [new BenchPanel("plate", new Panel(surface, new Metal()), (pose ?? new Pose(default)) with { Position = (pose?.Position ?? default) + At(panelAt) }, Stands: false)],
        Source = GoodBench.Plan.Source with { Pose = new Pose(At(0.0)) },
        Receiver = new ReceiverEnd("open", new Pose(At(receiverAt), turn: Math.PI)),
        Demonstrations = [],
    };

    internal static Vector At(double along) => new(0.3 + along, 0.0, 0.45);

    internal static FlatSurface Slits(double size, double width, double spacing, int count) => new(
        new RectangleShape(0.0, 0.0, size, size),
        [.. Enumerable.Range(0, count).Select(i => Piece.Removed(new RectangleShape((i - (0.5 * (count - 1))) * spacing, 0.0, width, 0.3)))]);

    /// <summary>A number that a demonstration shows.</summary>
    internal static Comparison Shown(this Prediction prediction, string what) =>
        Assert.Single(Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons, comparison => comparison.What == what);

    /// <summary>Every text is there, and is a sentence.</summary>
    internal static void IsWhole(Lesson lesson) => Assert.All(
        new[] { lesson.Stand, lesson.Spoils, lesson.WrongPicture, lesson.WhyItFails, lesson.ForAChild, lesson.ForAStudent },
        text => Assert.Matches("^[A-Z].{30,}[.]$", text));
}
