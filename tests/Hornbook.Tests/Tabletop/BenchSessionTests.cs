using System.Collections.Concurrent;
using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Desk;
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
        Assert.True(_session.StandsAsOpened);
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
        Assert.False(_session.StandsAsOpened);
    }

    [Fact]
    public void A_move_to_the_same_place_tells_nothing()
    {
        _session.Changed += () => Assert.Fail("nothing changed");
        _session.Place(BenchEnd.Source, _session.PoseOf(BenchEnd.Source));
    }

    [Fact]
    public void What_is_put_down_is_never_shown_where_it_was_before()
    {
        Pose held = _session.PoseOf(BenchEnd.Receiver) with { Position = _session.PoseOf(BenchEnd.Receiver).Position + new Vector(0.0, 0.1, 0.0) };
        _session.Place(BenchEnd.Receiver, held);
        ConcurrentQueue<double> shown = [];
        _session.Changed += () => shown.Enqueue(_session.PoseOf(BenchEnd.Receiver).Position.Y);
        _session.Release();
        Assert.NotEmpty(shown);
        Assert.All(shown, left => Close.Absolute(held.Position.Y, left, 1e-9));
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
    public void Put_back_restores_the_opening_and_can_be_undone()
    {
        Reading filed = _session.Reading;
        _session.Place(BenchEnd.Source, new Pose(new Vector(0.2, 0.1, 0.3), 0.1, 0.1, 0.1));
        _session.Release();
        Reading moved = _session.Reading;
        _session.PutBack();
        Assert.True(_session.StandsAsOpened);
        Assert.Equal(filed, _session.Reading);
        _session.Undo();
        Assert.Equal(moved, _session.Reading);
    }

    [Fact]
    public void A_drag_of_many_moves_is_one_step()
    {
        Pose start = _session.PoseOf(BenchEnd.Receiver);
        for (int i = 1; i <= 20; i++)
        {
            _session.Place(BenchEnd.Receiver, start with { Position = start.Position + new Vector(-0.01 * i, 0.0, 0.0) });
        }

        Assert.False(_session.History.CanUndo);
        _session.Release();
        Assert.Equal("moving the receiver", _session.History.Present.What);
        Pose end = _session.PoseOf(BenchEnd.Receiver);
        _session.Undo();
        Assert.Equal(start, _session.PoseOf(BenchEnd.Receiver));
        Assert.False(_session.History.CanUndo);
        _session.Redo();
        Assert.Equal(end, _session.PoseOf(BenchEnd.Receiver));
        Assert.False(_session.History.CanRedo);
    }

    [Fact]
    public void Undo_in_the_middle_of_a_drag_takes_that_drag_back()
    {
        Pose start = _session.PoseOf(BenchEnd.Receiver);
        _session.Place(BenchEnd.Receiver, start with { Turn = 2.0 });
        _session.Undo();
        Assert.Equal(start, _session.PoseOf(BenchEnd.Receiver));
        Assert.True(_session.History.CanRedo);
    }

    [Fact]
    public void Another_window_on_the_same_desk_shows_what_is_in_hand_and_the_own_hand_comes_first()
    {
        BenchDesk desk = new(ExampleBench.File);
        using BenchSession one = ExampleBench.Session(desk), other = ExampleBench.Session(desk);
        int told = 0;
        other.Changed += () => told++;
        one.Place(BenchEnd.Receiver, one.Receiver.Pose with { Turn = 2.5 });
        Assert.Equal(2.5, other.Receiver.Pose.Turn);
        Assert.Equal(one.Reading, other.Reading);
        Assert.Equal(1, told);

        other.Place(BenchEnd.Receiver, other.Receiver.Pose with { Turn = 2.0 });
        Assert.Equal(2.0, other.Receiver.Pose.Turn);
        Assert.Equal(2.5, one.Receiver.Pose.Turn); // derived: held there
        other.Release();
        one.Release();
        Assert.Equal(2.5, other.Receiver.Pose.Turn, 2); // derived: put down last, in the file to a tenth of a degree
        Assert.False(other.HasInHand);
    }

    [Fact]
    public void Another_window_on_the_same_desk_shows_the_step()
    {
        BenchDesk desk = new(ExampleBench.File);
        using BenchSession one = ExampleBench.Session(desk), other = ExampleBench.Session(desk);
        one.Place(BenchEnd.Source, one.PoseOf(BenchEnd.Source) with { Turn = 0.5 });
        one.Release();
        Assert.Equal(one.Reading, other.Reading);
        // What it has in hand meanwhile stays in its hand.
        other.Place(BenchEnd.Receiver, other.PoseOf(BenchEnd.Receiver) with { Roll = 0.5 });
        one.Undo();
        // derived: set above, half a radian.
        Assert.Equal(0.5, other.PoseOf(BenchEnd.Receiver).Roll);
        Assert.Equal(ExampleBench.Scene.Plan.Source, other.Source);
    }

    [Fact]
    public void What_was_read_before_the_move_stays_to_compare_with()
    {
        Assert.Null(_session.Before);
        Reading first = _session.Reading;
        _session.Place(BenchEnd.Receiver, _session.PoseOf(BenchEnd.Receiver) with { Turn = 2.9 });
        Assert.Equal(first, _session.Before);
        _session.Release();
        Assert.Equal(first, _session.Before);
    }

    [Fact]
    public async Task The_findings_are_those_of_the_bench_as_moved_and_their_move_mends_them()
    {
        await _session.Advice.CompleteAsync();
        Assert.DoesNotContain(_session.Advice.Findings!, f => f.Id == "polarisation-crossed");
        _session.Place(BenchEnd.Receiver, _session.PoseOf(BenchEnd.Receiver) with { Roll = Math.PI / 3.0 });
        _session.Release();
        await _session.Advice.CompleteAsync();
        Finding crossed = Assert.Single(_session.Advice.Findings!, f => f.Id == "polarisation-crossed");
        _session.Mend(crossed.Mend!);
        await _session.Advice.CompleteAsync();
        Assert.Null(_session.Refusal);
        Assert.DoesNotContain(_session.Advice.Findings!, f => f.Id == "polarisation-crossed");
        Assert.Contains("roll the receiver", _session.History.Present.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mend_that_sets_several_values_is_one_step()
    {
        double source = _session.PoseOf(BenchEnd.Source).Position.Z;
        _session.Mend(new Mend("Raise both axes to 50 cm.", "source.z", "50 cm") { Also = [new MendedKey("receiver.z", "50 cm")] });
        Assert.Equal(0.5, _session.PoseOf(BenchEnd.Source).Position.Z);
        Assert.Equal(0.5, _session.PoseOf(BenchEnd.Receiver).Position.Z);
        _session.Undo();
        Assert.Equal(source, _session.PoseOf(BenchEnd.Source).Position.Z);
        Assert.NotEqual(0.5, _session.PoseOf(BenchEnd.Receiver).Position.Z);
    }

    [Fact]
    public async Task What_takes_longer_comes_later()
    {
        Assert.Null(_session.Advice.KeepOut);
        await _session.Advice.CompleteAsync();
        Assert.NotNull(_session.Advice.Findings);
        Assert.NotNull(_session.Advice.KeepOut);
        Assert.NotNull(_session.Advice.Limit);
        // derived: twice as far in the far zone would be a quarter of the density, so the limit lies within the drawn shape only.
        Close.Relative(_session.Advice.KeepOut.Towards(new Vector(2.0, 0.0, 0.0)), _session.Advice.KeepOut.OnAxis, 1e-12);
    }
}
