using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

/// <summary>A bench with panels at hand that shows what it should; everything lies aside until a demonstration puts it in.</summary>
internal static class PanelBench
{
    internal const double Wavelength = Constants.SpeedOfLight / 10.525e9;

    internal static BenchPlan Plan { get; } = GoodBench.Plan with
    {
        Title = "A bench with panels at hand",
        Table = new TableTop(1.8, 0.7),
        Antennas =
        [
            new NamedAntenna("horn", new Horn(Wr90, 0.094, 0.079, 0.066, Conductor.Brass)),
            new NamedAntenna("small", new Horn(Wr90, 0.046, 0.036, 0.045, Conductor.Brass)),
        ],
        Source = new SourceEnd("horn", new Pose(new Vector(0.3, 0.0, 0.4)), 5e-3, 6e-3),
        Receiver = new ReceiverEnd("small", new Pose(new Vector(1.15, 0.0, 0.4), turn: Math.PI)),
        Panels =
        [
            Aside("strips", new StripGrid(5e-3, 2.5e-3), 0.45),
            Aside("box", new TurnedSheet(new StripGrid(5e-3, 2.5e-3), 0.25 * Math.PI), 0.45),
            Aside("plate", new Metal(), 0.8),
            Aside("acrylic", new LayeredSheet(new Layer(Dielectrics.Find("acrylic glass")!, 5e-3)), 0.75),
            Aside("screen", new Absorber(0.01, 1e-4, 50e-3), 0.8),
            Aside("half-1", ImpedanceSheet.Mirror(0.5), 0.5, 0.2),
            Aside("half-2", ImpedanceSheet.Mirror(0.5), 0.55, 0.2),
        ],
        Demonstrations = [],
    };

    private static RectangularGuide Wr90 => StandardGuides.Find("WR-90")!.Guide;

    private static BenchPanel Aside(string name, ISheet sheet, double x, double side = 0.3) =>
        new(name, new Panel(new RectangularSurface(side, side), sheet), new Pose(new Vector(x, 0.0, 0.4)), Stands: false);
}
