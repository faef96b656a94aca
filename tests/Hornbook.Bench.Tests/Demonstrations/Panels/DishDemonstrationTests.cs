using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class DishDemonstrationTests
{
    private static readonly BenchPlan Plan = WaveBench.With(new DishSurface(0.36, 0.12), 1.4, 1.2, new Pose(default, turn: Math.PI));
    private static readonly DishDemonstration Dish = new("dish", "plate", 0.09, 0.18, 37);
    private static readonly Prediction Prediction = Prediction.Of(Scene.Of(Plan), Dish, cancellation: CancellationToken.None);

    [Fact]
    public void The_receiver_looks_into_the_dish_from_its_axis() => Assert.All(Dish.Course(Plan), setting =>
    {
        Close.Absolute(0.0, (setting.Receiver.Pose.Position - WaveBench.At(1.4 - setting.At)).Length, 1e-12);
        Close.Absolute(1.0, setting.Receiver.Pose.Forward.X, 1e-12);
    });

    [Fact]
    public void It_gathers_most_a_little_beyond_its_focus()
    {
        // derived: 1/(1/0.12 − 1/1.4) = 13.1 cm; half a wavelength is what a focus is wide.
        Close.Absolute(0.13125, Prediction.Shown("strongest at").InBooks!.Value, 1e-9);
        Close.Absolute(0.13125, Prediction.Shown("strongest at").OnBench!.Value, 0.01);
    }

    [Fact]
    public void Its_gain_is_that_of_its_area_and_a_common_efficiency()
    {
        double whole = Math.Pow(Math.PI * 0.36 / WaveBench.Wavelength, 2.0);

        // common practice, no source: 0.5 to 0.7
        Assert.InRange(Prediction.Shown("efficiency").OnBench!.Value, 0.5, 0.7);
        Close.Absolute(Decibels.FromRatio(whole * Prediction.Shown("efficiency").OnBench!.Value), Prediction.Shown("gain").OnBench!.Value, 1e-9);
        Close.Absolute(Decibels.FromRatio(0.55 * whole), Prediction.Shown("gain").InBooks!.Value, 1e-9);
    }

    [Fact]
    public void Another_reach_moves_the_dish() =>
        Close.Absolute(1.1, (Assert.Single(Dish.Arrangements(Plan, 1.1)).Panels[0].Pose.Position - Plan.Source.Pose.Position).Length, 1e-12);

    [Fact]
    public void The_sentence_and_the_lesson_are_whole()
    {
        Assert.Contains("looking into the dish", Prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Dish.Lesson(Plan));
    }
}
