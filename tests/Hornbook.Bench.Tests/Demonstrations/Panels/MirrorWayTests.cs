using CsCheck;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

public sealed class MirrorWayTests
{
    private static readonly Gen<Vector> Place = Gen.Select(Gen.Double[0.0, 2.0], Gen.Double[-0.4, 0.4], Gen.Double[0.2, 0.5], (x, y, z) => new Vector(x, y, z));

    [Fact]
    public void The_receiver_stands_where_a_flat_mirror_sends_the_ray_and_looks_at_its_middle() =>
        Gen.Select(Place, Place, Place, Gen.Double[-1.4, 1.4]).Where((source, middle, receiver, _) => Apart(source, middle) && Apart(receiver, middle))
            .Sample((source, middle, receiver, incidence) =>
            {
                Pose panel = MirrorWay.Panel(new Pose(middle, roll: 0.3), source, incidence);
                Pose moved = MirrorWay.Receiver(new Pose(receiver, roll: 0.7), panel, source, incidence);

                // The law of reflection: a ray that meets the middle leaves as d − 2 (d·n) n.
                Vector ray = (middle - source).Unit;
                Vector returned = ray - (panel.Forward * (2.0 * Vector.Dot(ray, panel.Forward)));
                Close.Absolute(0.0, ((moved.Position - middle).Unit - returned).Length, 1e-12);
                Close.Absolute(0.0, (moved.Forward + returned).Length, 1e-12);
                Close.Relative((receiver - middle).Length, (moved.Position - middle).Length, 1e-12);
                Assert.Equal((0.3, 0.7), (panel.Roll, moved.Roll));
            });

    [Fact]
    public void On_a_level_bench_the_angle_of_incidence_is_the_one_asked_for() => Gen.Double[-1.4, 1.4].Sample(incidence =>
    {
        Vector source = new(0.3, 0.1, 0.4), middle = new(0.9, -0.05, 0.4);
        Pose panel = MirrorWay.Panel(new Pose(middle), source, incidence);
        Close.Absolute(Math.Cos(incidence), Vector.Dot(panel.Forward, (source - middle).Unit), 1e-12);
    });

    private static bool Apart(Vector a, Vector b) => Math.Abs(a.X - b.X) > 0.1;
}
