using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class WatchedPlaceTests
{
    private static readonly BenchPlan Plan = BenchFile.Read(Repository.At("examples", "evening-bench.toml")).Plan!;
    private static readonly ExposureField Field = ExposureField.Of(Scene.Of(Plan).Source, Plan.Source.WorstCasePower);

    [Fact]
    public void Ahead_of_the_source_the_edge_gets_what_the_axis_does()
    {
        WatchedPlace ahead = WatchedPlace.Of(Plan, Field)[0];
        // derived: the source of the example looks straight along the middle of the table, so its axis meets the end.
        double distance = Plan.Table.Length - Plan.Source.Pose.Position.X;
        Close.Absolute(distance, ahead.Distance, 0.01);
        Close.Relative(Field.Density(new Vector(distance, 0.0, 0.0)), ahead.Density, 1e-3);
    }

    [Fact]
    public void Both_long_edges_of_a_straight_bench_get_the_same_and_the_presenter_less()
    {
        IReadOnlyList<WatchedPlace> places = WatchedPlace.Of(Plan, Field);
        Close.Relative(places[2].Density, places[3].Density, 1e-6);
        Assert.True(places[4].Density < places[2].Density);
    }

    [Fact]
    public void A_hand_at_the_receiver_gets_what_the_field_there_is()
    {
        Vector own = Plan.Source.Pose.ToOwn(Plan.Receiver.Pose.Position);
        Close.Relative(Field.Density(own), WatchedPlace.Of(Plan, Field)[^1].Density, 1e-12);
    }
}
