using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class BenchSessionTests
{
    // Around the mouth of the source, in the steps of a hand: whole millimetres and half degrees.
    private static readonly Gen<Pose> RandomPose = Gen.Select(
        Gen.Int[-60, 60], Gen.Int[-60, 60], Gen.Int[-60, 60], Gen.Int[-360, 360], Gen.Int[-180, 180], (x, y, z, turn, tilt) =>
            new Pose(
                ExampleBench.Scene.Plan.Source.Pose.Position + (new Vector(x, y, z) * 1e-3),
                turn * Math.PI / 360.0,
                tilt * Math.PI / 360.0));

    private readonly BenchSession _session = ExampleBench.Session();

    [Fact]
    public void It_begins_as_the_file_has_it()
    {
        Assert.True(_session.StandsAsInFile);
        Assert.Equal(ExampleBench.Scene.Read(), _session.Reading);
    }

    [Fact]
    public void A_move_reads_what_the_scene_reads_there_and_tells_once()
    {
        int told = 0;
        _session.Changed += () => told++;
        Pose turned = _session.PoseOf(BenchEnd.Receiver) with { Turn = 3.0 };
        _session.Place(BenchEnd.Receiver, turned);
        Reading expected = ExampleBench.Scene.Read(_session.Plan.Source, _session.Plan.Receiver with { Pose = turned });
        Assert.Equal(expected, _session.Reading);
        Assert.Equal(1, told);
        Assert.False(_session.StandsAsInFile);
    }

    [Fact]
    public void A_move_to_the_same_place_tells_nothing()
    {
        _session.Changed += () => Assert.Fail("nothing changed");
        _session.Place(BenchEnd.Source, _session.PoseOf(BenchEnd.Source));
    }

    [Fact]
    public void The_mouths_cannot_be_put_into_one_place()
    {
        Pose before = _session.PoseOf(BenchEnd.Receiver);
        _session.Place(BenchEnd.Receiver, before with { Position = _session.PoseOf(BenchEnd.Source).Position });
        Assert.Equal(before, _session.PoseOf(BenchEnd.Receiver));
    }

    [Fact]
    public void Nothing_leaves_the_table()
    {
        _session.Place(BenchEnd.Source, new Pose(new Vector(-9.0, 9.0, -9.0)));
        // derived: the table begins at x = 0, its left edge is half its width away, its top is z = 0.
        Assert.Equal(new Vector(0.0, _session.Plan.Table.Width / 2.0, 0.0), _session.PoseOf(BenchEnd.Source).Position);
    }

    [Fact]
    public void Any_pose_that_a_hand_can_give_is_read() => RandomPose.Sample(
        pose =>
        {
            BenchSession session = ExampleBench.Session();
            session.Place(BenchEnd.Receiver, pose);
            Assert.True(double.IsFinite(session.Reading.Link) && double.IsFinite(session.Reading.Heard.JitterCents) && session.Reading.Heard.Tone > 0.0);
            Assert.NotEmpty(Words.Spoken(session.Reading));
        },
        iter: 300);

    [Fact]
    public void Put_back_restores_the_file()
    {
        Reading filed = _session.Reading;
        _session.Place(BenchEnd.Source, new Pose(new Vector(0.2, 0.1, 0.3), 0.1, 0.1, 0.1));
        _session.PutBack();
        Assert.True(_session.StandsAsInFile);
        Assert.Equal(filed, _session.Reading);
    }

    [Fact]
    public async Task What_takes_longer_comes_later()
    {
        Assert.Null(_session.KeepOut);
        await _session.CompleteAsync();
        Assert.NotNull(_session.Findings);
        Assert.NotNull(_session.KeepOut);
        Assert.NotNull(_session.Limit);
        // derived: twice as far in the far zone would be a quarter of the density, so the limit lies within the drawn shape only.
        Close.Relative(_session.KeepOut.Towards(new Vector(2.0, 0.0, 0.0)), _session.KeepOut.OnAxis, 1e-12);
    }
}
