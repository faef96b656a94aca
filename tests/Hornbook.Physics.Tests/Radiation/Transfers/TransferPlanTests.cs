using CsCheck;
using Hornbook.Physics.Radiation.Transfers;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

public sealed class TransferPlanTests
{
    // Derived: −ln 1e-4.
    private const double Digits = 9.21;

    [Fact]
    public void Every_sample_meets_every_other_exactly_once() =>
        Gen.Select(Gen.Double[0.02, 0.5], Gen.Double[0.0, 0.1]).SelectMany((x, z) => Body.Panel(new Vector(x, 0.0, 0.1 + z), 0.15)).Sample(
            panel =>
            {
                SampleTree first = panel.Tree, second = Body.Table(0.4, 0.2).Tree;
                int[] meetings = new int[first.Points.Length * second.Points.Length];
                foreach (BoxPair pair in TransferPlan.Of(first, second, 220.0, Digits).Pairs)
                {
                    for (int i = pair.First.First; i < pair.First.End; i++)
                    {
                        for (int j = pair.Second.First; j < pair.Second.End; j++)
                        {
                            meetings[(i * second.Points.Length) + j]++;
                        }
                    }
                }

                Assert.All(meetings.Distinct(), m => Assert.Equal(1, m));
            },
            iter: 10);

    [Fact]
    public void Far_apart_two_panels_are_one_pair_and_cost_a_tenth_of_the_direct_sum()
    {
        Body a = Body.Sheet(0.15, 0.15, default), b = Body.Sheet(0.15, 0.15, new Pose(new Vector(1.0, 0.0, 0.0)));
        (BoxPair[] pairs, double cost) = TransferPlan.Of(a.Tree, b.Tree, 220.0, Digits);
        Assert.True(Assert.Single(pairs).IsCoarse);
        // Derived: 625 samples each, 3 ns a pair of them as the kernel takes.
        Assert.InRange(cost, 0.0, 0.1 * 625 * 625 * 3.0);
    }

    [Fact]
    public void What_touches_is_summed_directly()
    {
        Body a = Body.Sheet(0.06, 0.06, default), b = Body.Sheet(0.06, 0.06, new Pose(new Vector(1e-3, 0.0, 0.0)));
        Assert.All(TransferPlan.Of(a.Tree, b.Tree, 220.0, Digits).Pairs, p => Assert.False(p.IsCoarse));
    }
}
