using CsCheck;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Tests.Readings;

public sealed class SceneTests
{
    private static readonly Scene Scene = GoodBench.Scene;

    private static readonly Gen<Pose> Poses =
        from x in Gen.Double[0.5, 1.5]
        from y in Gen.Double[-0.3, 0.3]
        from z in Gen.Double[0.1, 0.5]
        from turn in Gen.Double[-Math.PI, Math.PI]
        from roll in Gen.Double[-Math.PI, Math.PI]
        select new Pose(new Vector(x, y, z), turn, 0.0, roll);

    [Fact]
    public void A_reading_takes_each_loss_once() =>
        Poses.Sample(
            pose =>
            {
                ReceiverEnd receiver = Scene.Plan.Receiver with { Pose = pose };
                Reading reading = Scene.Read(Scene.Plan.Source, receiver);
                Complex amplitude = Scene.LinkAmplitude(Scene.Plan.Source, receiver);
                Close.Relative(amplitude.Magnitude * amplitude.Magnitude, reading.Link, 1e-12);
                Close.Relative(Scene.Source.MismatchEfficiency * Scene.Receiver.MismatchEfficiency, reading.Mismatch, 1e-15);
                Close.Relative(reading.Link * Scene.Plan.Source.Power, reading.ReceivedPower, 1e-15);
                Assert.Equal(Scene.Plan.Detection.Hear(reading.ReceivedPower), reading.Heard);
            },
            iter: 20);

    [Fact]
    public void What_does_not_move_is_read_the_same_twice() => Assert.Equal(Scene.Read(), Scene.Read());

    [Fact]
    public void Moving_and_turning_the_whole_bench_changes_nothing() =>
        Gen.Select(Poses, Gen.Double[-Math.PI, Math.PI]).Sample(
            (pose, turned) =>
            {
                // Space has no preferred direction: turn both ends about z by the same angle.
                Pose source = Scene.Plan.Source.Pose;
                double before = Link(source, pose), after = Link(Turned(source, turned), Turned(pose, turned));
                Close.Relative(before, after, 1e-9);
            },
            iter: 20);

    [Theory]
    [InlineData(0.0, TrustLevel.Good)]
    [InlineData(19.0, TrustLevel.Good)]
    [InlineData(61.0, TrustLevel.Outside)]
    public void How_far_to_believe_it_depends_on_the_angle_off_the_axes(double degrees, TrustLevel expected)
    {
        // An open end as receiver keeps within 20 dB of face to face at these angles, so that the angle alone decides.
        ReceiverEnd receiver = new("open", Scene.Plan.Receiver.Pose with { Turn = Math.PI + (degrees * GoodBench.Degree) });
        Trust trust = Scene.Read(Scene.Plan.Source, receiver).Trust;
        Assert.Equal(expected, trust.Level);
    }

    [Fact]
    public void Halfway_off_the_axis_it_is_rough_and_says_which_end()
    {
        ReceiverEnd receiver = new("open", Scene.Plan.Receiver.Pose with { Turn = Math.PI + (30.0 * GoodBench.Degree) });
        Trust trust = Scene.Read(Scene.Plan.Source, receiver).Trust;
        Assert.Equal(
            new Trust(TrustLevel.Rough, "The source stands 30° off the receiver's axis: beyond 20° the prediction is good to a decibel or two."), trust);
    }

    [Fact]
    public void Far_below_face_to_face_it_is_rough()
    {
        ReceiverEnd receiver = new("open", Scene.Plan.Receiver.Pose with { Roll = 88.0 * GoodBench.Degree });
        Assert.Equal(TrustLevel.Rough, Scene.Read(Scene.Plan.Source, receiver).Trust.Level);
    }

    [Fact]
    public void Closer_than_a_wavelength_it_is_not_to_be_trusted()
    {
        Pose source = Scene.Plan.Source.Pose;
        ReceiverEnd receiver = new("open", source with { Position = source.Position + new Vector(0.02, 0.0, 0.0), Turn = Math.PI });
        Assert.Equal(TrustLevel.Outside, Scene.Read(Scene.Plan.Source, receiver).Trust.Level);
    }

    [Fact]
    public void A_guide_below_its_cutoff_cannot_be_read()
    {
        BenchPlan low = Scene.Plan with { Frequency = 6.5e9 };
        Assert.False(Scene.CanRead(low));
        Assert.Throws<ArgumentOutOfRangeException>(() => Scene.Of(low));
    }

    [Fact]
    public void A_changed_bench_takes_over_the_antennas_that_stayed_as_they_were()
    {
        NamedAntenna[] changed = [.. Scene.Plan.Antennas.Skip(1), Scene.Plan.Antennas[0] with { Shape = Scene.Plan.Antennas[1].Shape }];
        Scene after = Scene.With(Scene.Plan with { Antennas = changed });
        Assert.All(changed[..^1], same => Assert.Same(Scene.Antenna(same.Name), after.Antenna(same.Name)));
        Assert.Equal(changed[^1].Shape, after.Antenna(changed[^1].Name).Shape);
        BenchPlan higher = Scene.Plan with { Frequency = 1.01 * Scene.Plan.Frequency };
        Assert.Equal(Scene.Of(higher).Read(), Scene.With(higher).Read());
    }

    [Fact]
    public void An_antenna_that_is_not_there_is_named()
    {
        KeyNotFoundException missing = Assert.Throws<KeyNotFoundException>(() => Scene.Antenna("trumpet"));
        Assert.Equal("no antenna is called 'trumpet'", missing.Message);
    }

    private static double Link(Pose source, Pose receiver) =>
        Scene.Read(Scene.Plan.Source with { Pose = source }, Scene.Plan.Receiver with { Pose = receiver }).Link;

    private static Pose Turned(Pose pose, double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        Vector p = pose.Position;
        return pose with { Position = new Vector((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos), p.Z), Turn = pose.Turn + angle };
    }
}
