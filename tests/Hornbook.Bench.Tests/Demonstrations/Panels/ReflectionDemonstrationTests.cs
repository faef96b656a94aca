using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class ReflectionDemonstrationTests
{
    private static readonly BenchPlan Plan = WaveBench.With(new RectangularSurface(0.3, 0.3), 0.6, 1.2);

    [Fact]
    public void Stands_the_receiver_about_the_plate_and_looking_at_it()
    {
        Vector plate = WaveBench.At(0.6);
        IReadOnlyList<Setting> course = (Mirror(40.0) with { Distance = 0.5 }).Course(Plan);

        Assert.All(course, setting =>
        {
            Vector arm = setting.Receiver.Pose.Position - plate;
            Close.Relative(0.5, arm.Length, 1e-12);
            Close.Absolute(-1.0, Vector.Dot(arm.Unit, setting.Receiver.Pose.Forward), 1e-12);
            Assert.InRange(setting.Receiver.Pose.Turn, -Math.PI, Math.PI);
            Close.Absolute(Math.Cos(setting.At), Vector.Dot(arm.Unit, new Vector(-1.0, 0.0, 0.0)), 1e-12);

            // derived: the plate's normal stands 40° off the source's direction
            Close.Absolute(Math.Cos(40.0 * WaveBench.Degree), Vector.Dot(setting.Panels[0].Pose.Forward, new Vector(-1.0, 0.0, 0.0)), 1e-12);
        });
    }

    [Theory]
    [InlineData(30.0, 1.0)]
    [InlineData(45.0, 1.0)]
    [InlineData(60.0, 1.5)]
    public void The_beam_goes_where_the_law_says(double incidence, double toleranceDegrees)
    {
        Prediction prediction = Predicting.Of(Plan, Mirror(incidence));
        Comparison middle = prediction.Shown("middle of the beam");

        // derived: twice the angle of incidence; 1° is what a hand can set, and at 60° the nearer half of the plate is lit more: measured 1.4°.
        Close.Absolute(2.0 * incidence * WaveBench.Degree, middle.OnBench!.Value, toleranceDegrees * WaveBench.Degree);
        Close.Relative(2.0 * incidence * WaveBench.Degree, middle.InBooks!.Value, 1e-12);

        // derived: nothing is lost, and a plate that ends with the first Fresnel zone gathers up to 1.80 in either direction (Cornu's spiral), 5.1 dB.
        Assert.InRange(prediction.Shown("beside the straight way").OnBench!.Value, -1.0, 5.1);
    }

    [Fact]
    public void The_sentence_and_the_lesson_tell_the_angles()
    {
        Prediction prediction = Predicting.Of(Plan, Mirror(45.0) with { Points = 9 });

        Assert.Contains("about the plate", prediction.Heard, StringComparison.Ordinal);
        Lesson lesson = prediction.Demonstration.Lesson(Plan);
        WaveBench.IsWhole(lesson);
        Assert.Contains("about 90°", lesson.Stand, StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_bench_keeps_the_plate_in_the_same_share_of_the_way()
    {
        BenchPlan longer = Assert.Single(Mirror(45.0).Arrangements(Plan, 1.5));

        // derived: half of 1.5 m
        Close.Absolute(0.75, (longer.Panels[0].Pose.Position - longer.Source.Pose.Position).Length, 1e-12);
        Close.Absolute(1.5, (longer.Receiver.Pose.Position - longer.Source.Pose.Position).Length, 1e-12);
    }

    private static ReflectionDemonstration Mirror(double incidence) =>
        new("mirror", "plate", incidence * WaveBench.Degree, ((2.0 * incidence) - 30.0) * WaveBench.Degree, ((2.0 * incidence) + 30.0) * WaveBench.Degree, 61);
}
