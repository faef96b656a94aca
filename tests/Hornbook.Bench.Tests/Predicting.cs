using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Xunit;

namespace Hornbook.Bench.Tests;

/// <summary>Predictions under the running test's cancellation.</summary>
internal static class Predicting
{
    internal static Curve Curve(Demonstration demonstration) =>
        Bench.Demonstrations.Curve.Of(GoodBench.Scene, demonstration, cancellation: TestContext.Current.CancellationToken);

    internal static Prediction Of(Demonstration demonstration) => Of(GoodBench.Plan, demonstration);

    internal static Prediction Of(BenchPlan plan, Demonstration demonstration) =>
        Prediction.Of(plan == GoodBench.Plan ? GoodBench.Scene : Scene.Of(plan), demonstration, cancellation: TestContext.Current.CancellationToken);
}
