using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class SlitsDemonstrationTests
{
    // Three wavelengths apart, most of a wavelength wide, in a plate so large that little goes round it.
    private static readonly BenchPlan Plan = WaveBench.With(WaveBench.Slits(0.6, 0.02, 0.085, 2), 0.25, 1.05);
    private static readonly SlitsDemonstration Two = new("slits", "plate", -47.0 * WaveBench.Degree, 47.0 * WaveBench.Degree, 95);
    private static readonly Prediction Prediction = Prediction.Of(Scene.Of(Plan), Two, cancellation: CancellationToken.None);

    [Fact]
    public void The_receiver_swings_about_the_plate_and_keeps_looking_at_it() => Assert.All((Two with { Distance = 0.6 }).Course(Plan), setting =>
    {
        Vector arm = setting.Receiver.Pose.Position - WaveBench.At(0.25);
        Close.Relative(0.6, arm.Length, 1e-12);
        Close.Absolute(-1.0, Vector.Dot(arm.Unit, setting.Receiver.Pose.Forward), 1e-12);
        Close.Absolute(setting.At, Math.Atan2(arm.Y, arm.X), 1e-12);
        Assert.True(setting.Panels[0].Stands);
    });

    [Theory]
    [InlineData("bright 1", 1.0)]
    [InlineData("dark 1", 0.5)]
    [InlineData("dark 2", 1.5)]
    public void Bright_and_dark_lie_where_the_law_says(string fringe, double order)
    {
        // derived: sin θ = mλ/d
        double angle = Math.Asin(order * WaveBench.Wavelength / 0.085);

        Close.Absolute(angle, Prediction.Shown(fringe).OnBench!.Value, 0.5 * WaveBench.Degree);
        Close.Relative(angle, Prediction.Shown(fringe).InBooks!.Value, 1e-9);
    }

    [Fact]
    public void The_beam_of_a_slit_draws_the_second_bright_fringe_in_as_its_width_says()
    {
        // derived: the maximum of cos²(πds/λ) sinc²(πws/λ) next to s = 2λ/d lies 0.0147 below it
        double angle = Math.Asin((2.0 * WaveBench.Wavelength / 0.085) - 0.0147);

        Close.Absolute(angle, Prediction.Shown("bright 2").OnBench!.Value, 0.5 * WaveBench.Degree);
    }

    [Fact]
    public void The_brightest_place_is_behind_the_bar_between_them() =>
        Close.Absolute(0.0, Prediction.Curve.Strongest.Setting.At, 1e-9);

    [Fact]
    public void A_single_slit_is_dark_where_its_edges_differ_by_a_wavelength()
    {
        SlitsDemonstration one = new("slit", "plate", -50.0 * WaveBench.Degree, 50.0 * WaveBench.Degree, 101);
        Prediction prediction = Predicting.Of(WaveBench.With(WaveBench.Slits(0.6, 0.055, 0.0, 1), 0.25, 1.05), one);

        // derived: sin θ = λ/w; the near field of a slit of two wavelengths and its edges leave a degree or two.
        Close.Absolute(Math.Asin(WaveBench.Wavelength / 0.055), prediction.Shown("dark 1").OnBench!.Value, 2.0 * WaveBench.Degree);
    }

    [Fact]
    public void The_sentence_and_the_lesson_are_whole()
    {
        Assert.Contains("as at 0°", Prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Two.Lesson(Plan));
    }
}
