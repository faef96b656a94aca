using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class TableEdgeTests
{
    private static ExposureField Open { get; } = ExposureField.Of(GoodBench.Scene.Antenna("open"), 15e-3);

    [Fact]
    public void Behind_the_source_the_edge_gets_what_is_known_at_60_degrees()
    {
        // derived: 6 cm behind the mouth nothing is known but that it is less than at 60° off the axis; every other edge is far away.
        TableEdge worst = TableEdge.Worst(new TableTop(5.0, 4.0), new Pose(new Vector(0.06, 0.0, 0.3)), Open);
        Close.Relative(0.06, worst.Distance, 1e-12);
        Close.Relative(Open.Density(new Vector(0.03, 0.06 * Math.Sin(Math.PI / 3.0), 0.0)), worst.Density, 1e-9);
    }

    [Fact]
    public void In_front_it_gets_the_density_there()
    {
        TableEdge worst = TableEdge.Worst(new TableTop(2.5, 4.0), new Pose(new Vector(2.0, 0.0, 0.3)), Open);
        Close.Relative(Open.Density(new Vector(0.5, 0.0, 0.0)), worst.Density, 1e-9);
    }
}
