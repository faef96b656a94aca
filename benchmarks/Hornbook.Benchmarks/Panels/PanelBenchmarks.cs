using BenchmarkDotNet.Attributes;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Benchmarks.Panels;

/// <summary>What a hand waits for when it moves something on a bench with panels.</summary>
[Config(typeof(ShortIterations))]
public class PanelBenchmarks
{
    private const double Frequency = 10.525e9;

    // As a bench prepares its table top.
    private const double TopRefinement = 0.8;

    private readonly Antenna _horn = Antenna.At(new Horn(Guide, 94e-3, 79e-3, 66e-3, Conductor.Brass), Frequency);
    private readonly Antenna _probe = Antenna.At(new OpenGuide(Guide, Conductor.Brass), Frequency);
    private readonly Pose _source = new(new Vector(0.3, 0.0, 0.25));
    private readonly Pose _receiver = new(new Vector(1.1, 0.0, 0.25), turn: Math.PI);
    private readonly PreparedPanel _grid = Prepared(0.15, 0.15, new StripGrid(5e-3, 2.5e-3));
    private Illumination _gridLit = null!; // set up before any run
    private Illumination _tableLit = null!; // set up before any run
    private PosedPanel[] _onTable = [];
    private double _shift;

    private static RectangularGuide Guide => StandardGuides.Find("WR-90")!.Guide;

    /// <summary>Solves both benches once.</summary>
    [GlobalSetup]
    public void Light()
    {
        _gridLit = Illumination.Of(_horn, _source, [new PosedPanel(_grid, new Pose(new Vector(0.7, 0.0, 0.25)))]);
        _onTable =
        [
            new PosedPanel(Prepared(0.7, 1.8, new LayeredSheet(new Layer(Dielectrics.Find("wood")!, 25e-3)), TopRefinement), new Pose(new Vector(0.9, 0.0, -0.0125), tilt: 0.5 * Math.PI)),
            new PosedPanel(Prepared(0.15, 0.15, new Metal()), new Pose(new Vector(0.7, 0.0, 0.25))),
            new PosedPanel(Prepared(0.15, 0.15, new Metal()), new Pose(new Vector(0.8, 0.25, 0.25), turn: 0.7)),
            new PosedPanel(Prepared(0.15, 0.15, new LayeredSheet(new Layer(Dielectrics.Find("glass")!, 4e-3))), new Pose(new Vector(0.9, -0.2, 0.25), turn: 0.5)),
        ];
        _tableLit = Illumination.Of(_horn, _source, _onTable);
    }

    /// <summary>The receiver moves; one grid stands.</summary>
    [Benchmark(Baseline = true)]
    public System.Numerics.Complex MovedReceiver() => _gridLit.Link(_probe, Next(_receiver));

    /// <summary>The grid moves, and the receiver reads it.</summary>
    [Benchmark]
    public System.Numerics.Complex MovedGrid() =>
        _gridLit.Moved([new PosedPanel(_grid, Next(new Pose(new Vector(0.7, 0.0, 0.25))))]).Link(_probe, _receiver);

    /// <summary>One of three panels over the table top is moved by hand, and the receiver reads it: the plate in the beam.</summary>
    [Benchmark]
    public System.Numerics.Complex MovedPlateOverTable() => MovedOverTable(1);

    /// <summary>The plate beside it.</summary>
    [Benchmark]
    public System.Numerics.Complex MovedPlateBesideOverTable() => MovedOverTable(2);

    /// <summary>The pane.</summary>
    [Benchmark]
    public System.Numerics.Complex MovedPaneOverTable() => MovedOverTable(3);

    private System.Numerics.Complex MovedOverTable(int panel)
    {
        PosedPanel[] now = [.. _onTable];
        now[panel] = now[panel] with { Pose = Next(now[panel].Pose) };
        return _tableLit.Moved(now, Settling.InHand).Link(_probe, _receiver);
    }

    private Pose Next(Pose pose)
    {
        _shift = (_shift + 1e-3) % 0.05;
        return pose with { Position = pose.Position + new Vector(_shift, 0.0, 0.0) };
    }

    private static PreparedPanel Prepared(double width, double height, ISheet sheet, double refinement = 1.0) =>
        PreparedPanel.At(new Panel(new RectangularSurface(width, height), sheet), Frequency, refinement);
}
