using Hornbook.Bench.Layout;
using Hornbook.Bench.Maps;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Maps;

public sealed class StrengthMapTests
{
    private static readonly SourceEnd Source = GoodBench.Plan.Source;
    private static readonly BenchPanel Plate = new(
        "plate", new Panel(new RectangularSurface(0.3, 0.3), new Metal()), new Pose(new Vector(0.8, 0.0, 0.3)), Stands: true);

    [Fact]
    public void On_the_axis_it_is_the_power_density_of_the_source()
    {
        StrengthMap map = StrengthMap.OverTable(GoodBench.Scene, Source, [], 0.05, cancellation: TestContext.Current.CancellationToken);
        int column = 30, row = map.Rows / 2;
        Vector place = new((column + 0.5) * GoodBench.Plan.Table.Length / map.Columns, ((row + 0.5) * GoodBench.Plan.Table.Width / map.Rows) - (0.5 * GoodBench.Plan.Table.Width), 0.3);

        // Independent way: the exposure field, which takes the worst case of 15 mW where this takes 10 mW; far from the mouth the wave is a plane one.
        ExposureField field = ExposureField.Of(GoodBench.Scene.Source, Source.Power);
        Close.Relative(field.Density(Source.Pose.ToOwn(place)), map.Densities[(row * map.Columns) + column], 0.05);
    }

    [Fact]
    public void Behind_a_metal_plate_it_is_dark()
    {
        StrengthMap open = StrengthMap.OverTable(GoodBench.Scene, Source, [], 0.02, cancellation: TestContext.Current.CancellationToken);
        StrengthMap shadowed = StrengthMap.OverTable(GoodBench.Scene, Source, [Plate], 0.02, cancellation: TestContext.Current.CancellationToken);
        int behind = (shadowed.Rows / 2 * shadowed.Columns) + (int)(0.85 / 2.2 * shadowed.Columns);

        // common practice, no source: well over 10 dB behind the middle of a plate ten waves wide.
        Assert.True(shadowed.Densities[behind] < 0.1 * open.Densities[behind]);
    }

    [Fact]
    public void The_upright_map_begins_at_the_table_and_is_strongest_at_the_height_of_the_axis()
    {
        StrengthMap map = StrengthMap.Upright(GoodBench.Scene, Source, [], 0.6, 0.02, cancellation: TestContext.Current.CancellationToken);
        int column = map.Columns / 2;
        int strongest = Enumerable.Range(0, map.Rows).MaxBy(row => map.Densities[(row * map.Columns) + column]);

        // derived: the source's axis lies at 0.3 m, the middle of 0.6 m.
        Assert.InRange((strongest + 0.5) * 0.6 / map.Rows, 0.28, 0.32);
    }

    [Fact]
    public void Tells_how_far_it_has_come_and_stops_when_asked()
    {
        Shares shares = new();
        StrengthMap.OverTable(GoodBench.Scene, Source, [], 0.01, shares, TestContext.Current.CancellationToken);
        Assert.Equal(1.0, shares.Told.Max());
        Assert.Contains(shares.Told, share => share is > 0.0 and < 1.0);

        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => StrengthMap.OverTable(GoodBench.Scene, Source, [], 0.01, cancellation: stopped.Token));
    }
}
