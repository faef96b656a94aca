using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Bench.Tests;

/// <summary>A bench on which everything works; tests spoil one thing at a time.</summary>
internal static class GoodBench
{
    internal const double Degree = Math.PI / 180.0;

    internal static BeamWidthDemonstration BeamWidth { get; } = new("beam width", BenchEnd.Receiver, -40.0 * Degree, 40.0 * Degree, 81);

    internal static AntennaChangeDemonstration Gain { get; } = new("gain", BenchEnd.Receiver, ["horn", "small", "open"]);

    internal static DistanceDemonstration Distance { get; } = new("distance", 0.6, 1.4, 41);

    internal static PolarisationDemonstration Polarisation { get; } = new("polarisation", 0.0, 90.0 * Degree, 46);

    internal static BenchPlan Plan { get; } = new()
    {
        Title = "A bench on which everything works",
        Frequency = 10.525e9,
        Table = new TableTop(2.2, 0.9),
        Antennas =
        [
            new NamedAntenna("horn", new Horn(Wr90, 0.094, 0.079, 0.13, Conductor.Brass)),
            new NamedAntenna("small", new Horn(Wr90, 0.050, 0.040, 0.06, Conductor.Brass)),
            new NamedAntenna("open", new OpenGuide(Wr90, Conductor.Brass)),
        ],
        Source = new SourceEnd("horn", new Pose(new Vector(0.3, 0.0, 0.3)), 10e-3, 15e-3),
        Receiver = new ReceiverEnd("horn", new Pose(new Vector(1.2, 0.0, 0.3), turn: Math.PI)),
        Detection = new DetectionChain(
            new JunctionDetector(400.0, 8e3),
            new Amplifier(60.0, 0.0, 0.0, 8.0, 12e-9, 30.0),
            new LinearTone { AtZero = 160.0, Lowest = 60.0, Highest = 3000.0, Slope = 400.0 }),
        Demonstrations = [BeamWidth, Gain, Distance, Polarisation],
    };

    internal static Scene Scene { get; } = Scene.Of(Plan);

    private static RectangularGuide Wr90 => StandardGuides.Find("WR-90")!.Guide;
}
