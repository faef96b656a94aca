using CsCheck;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Detection;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class RandomBenchesTests
{
    /// <summary>Angles with the awkward ones among them: aligned, crossed, turned away.</summary>
    private static readonly Gen<double> Angle = Gen.OneOf(OneOf(0.0, 0.5 * Math.PI, Math.PI, -0.25 * Math.PI), Gen.Double[-3.2, 3.2]);

    private static readonly Gen<Pose> AnyPose = Gen.Select(
        Gen.OneOf(OneOf(0.3, 1.2), Gen.Double[-1.0, 4.0]), Gen.OneOf(Gen.Const(0.0), Gen.Double[-1.0, 1.0]), Gen.OneOf(Gen.Const(0.3), Gen.Double[-0.2, 1.0]),
        Angle, Angle, Angle)
        .Select((x, y, z, turn, tilt, roll) => new Pose(new Vector(x, y, z), turn, 0.2 * tilt, roll));

    private static readonly Gen<string> AntennaName = OneOf("horn", "small", "open");

    private static readonly Gen<Demonstration> AnyDemonstration = Gen.OneOf<Demonstration>(
        Gen.Select(Gen.Bool, Angle, Angle).Select((source, from, to) =>
            (Demonstration)new BeamWidthDemonstration("beam", source ? BenchEnd.Source : BenchEnd.Receiver, from, to + 7.0, 5)),
        Gen.Select(AntennaName, AntennaName).Select((a, b) => (Demonstration)new AntennaChangeDemonstration("gain", BenchEnd.Source, [a, b])),
        Gen.Double[0.01, 5.0].Select(from => (Demonstration)new DistanceDemonstration("far", from, from * 1.5, 4)),
        Angle.Select(from => (Demonstration)new PolarisationDemonstration("roll", from, from + 2.0, 4)));

    private static readonly Gen<ToneLaw> AnyTone = Gen.Double[-3.0, 3.0].Select(slope => slope == 0.0
        ? (ToneLaw)new LinearTone { AtZero = 200.0, Lowest = 20.0, Highest = 20e3, Slope = -200.0 }
        : new ExponentialTone { AtZero = 200.0, Lowest = 50.0, Highest = 18e3, OctavesPerVolt = slope });

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    [Fact]
    public void Every_bench_that_can_be_written_down_is_looked_over_without_an_exception_and_without_a_number_that_is_none() =>
        Gen.Select(AnyPose, AnyPose, AntennaName, AnyDemonstration, AnyTone, Gen.Double[-12.0, 1.0], Gen.Double[0.0, 5.0]).Sample(
            (source, receiver, antenna, demonstration, tone, logPower, logGain) =>
            {
                double power = Math.Pow(10.0, logPower);
                BenchPlan plan = GoodBench.Plan with
                {
                    Source = GoodBench.Plan.Source with { Pose = source, Power = power, WorstCasePower = power },
                    Receiver = new ReceiverEnd(antenna, receiver),
                    Demonstrations = [demonstration],
                    Detection = GoodBench.Plan.Detection with { Tone = tone, Amplifier = GoodBench.Plan.Detection.Amplifier with { Gain = Math.Pow(10.0, logGain) } },
                };
                foreach (Finding finding in Checking.Check(plan))
                {
                    Assert.DoesNotMatch("NaN|∞|Infinity|E[+-]", $"{finding}");
                }
            },
            iter: 40,
            threads: 1);
}
