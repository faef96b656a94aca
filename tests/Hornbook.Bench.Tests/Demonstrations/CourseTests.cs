using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class CourseTests
{
    private static BenchPlan Plan => GoodBench.Plan;

    [Theory]
    [InlineData(BenchEnd.Source)]
    [InlineData(BenchEnd.Receiver)]
    public void A_beam_width_turns_the_named_end_and_leaves_the_other(BenchEnd end)
    {
        IReadOnlyList<Setting> course = new BeamWidthDemonstration("b", end, -1.0, 1.0, 3).Course(Plan);
        Assert.All(course, s => Assert.True(end == BenchEnd.Source ? s.Receiver == Plan.Receiver : s.Source == Plan.Source));
        Assert.Equal([-1.0, 0.0, 1.0], course.Select(s => s.At));
        Assert.Equal(
            [-1.0, 0.0, 1.0],
            course.Select(s => end == BenchEnd.Source ? s.Source.Pose.Turn : s.Receiver.Pose.Turn - Math.PI).Select(turn => Math.Round(turn, 12)));
    }

    [Fact]
    public void A_distance_law_moves_the_receiver_along_the_axis_of_a_turned_source()
    {
        Pose turned = new(new Vector(0.3, 0.1, 0.2), turn: 0.4, tilt: 0.1);
        BenchPlan plan = Plan with { Source = Plan.Source with { Pose = turned } };
        foreach (Setting setting in new DistanceDemonstration("d", 0.5, 1.5, 5).Course(plan))
        {
            Vector own = turned.ToOwn(setting.Receiver.Pose.Position);
            Close.Relative(setting.At, own.X, 1e-12);
            Close.Absolute(0.0, own.Y, 1e-12);
            Close.Absolute(0.0, own.Z, 1e-12);
            Close.Relative(setting.At, setting.Distance, 1e-12);
        }
    }

    [Fact]
    public void A_change_of_antennas_keeps_the_mouth_in_place_and_says_which_antenna_it_is()
    {
        IReadOnlyList<Setting> course = new AntennaChangeDemonstration("g", BenchEnd.Source, ["open", "horn"]).Course(Plan);
        Assert.Equal(["open", "horn"], course.Select(s => s.Label));
        Assert.Equal([1.0, 2.0], course.Select(s => s.At));
        Assert.All(course, s => Assert.Equal(Plan.Source with { Antenna = s.Label }, s.Source));
    }

    [Fact]
    public void Polarisation_rolls_the_receiver_off_its_present_roll()
    {
        ReceiverEnd rolled = Plan.Receiver with { Pose = Plan.Receiver.Pose with { Roll = 0.2 } };
        IReadOnlyList<Setting> course = new PolarisationDemonstration("p", 0.0, 1.0, 3).Course(Plan with { Receiver = rolled });
        Assert.Equal([0.2, 0.7, 1.2], course.Select(s => Math.Round(s.Receiver.Pose.Roll, 12)));
    }
}
