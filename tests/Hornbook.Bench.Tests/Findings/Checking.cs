using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Detection;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

/// <summary>Spoils the good bench and looks for what is found.</summary>
internal static class Checking
{
    internal static BenchPlan Good => GoodBench.Plan;

    /// <summary>The good bench without its demonstrations, where the bench alone is looked at.</summary>
    internal static BenchPlan Bare => Good with { Demonstrations = [] };

    internal static IReadOnlyList<Finding> Check(BenchPlan plan) =>
        BenchFindings.Of(plan, cancellation: TestContext.Current.CancellationToken);

    /// <summary>The one finding of a kind; fails where there is none or more.</summary>
    internal static Finding The(string id, BenchPlan plan) => Assert.Single(Check(plan), f => f.Id == id);

    internal static void None(string id, BenchPlan plan) => Assert.DoesNotContain(Check(plan), f => f.Id == id);

    internal static BenchPlan WithSource(this BenchPlan plan, Func<Pose, Pose> move) =>
        plan with { Source = plan.Source with { Pose = move(plan.Source.Pose) } };

    internal static BenchPlan WithReceiver(this BenchPlan plan, Func<Pose, Pose> move) =>
        plan with { Receiver = plan.Receiver with { Pose = move(plan.Receiver.Pose) } };

    internal static BenchPlan WithAmplifier(this BenchPlan plan, Func<Amplifier, Amplifier> set) =>
        plan with { Detection = plan.Detection with { Amplifier = set(plan.Detection.Amplifier) } };

    internal static Pose Lifted(this Pose pose, double height) => pose with { Position = pose.Position with { Z = height } };
}
