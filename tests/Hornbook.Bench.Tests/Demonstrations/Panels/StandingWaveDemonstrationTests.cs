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
public sealed class StandingWaveDemonstrationTests
{
    private static readonly BenchPlan Plan = WaveBench.With(new RectangularSurface(0.3, 0.3), 0.8, 1.2);
    private static readonly StandingWaveDemonstration Shown = new("standing", "plate", 0.1, 0.0, 0.06, 61);
    private static readonly Prediction Prediction = Prediction.Of(Scene.Of(Plan), Shown, cancellation: CancellationToken.None);

    [Fact]
    public void The_plate_moves_away_square_to_the_beam_and_the_probe_looks_across() => Assert.All(Shown.Course(Plan), setting =>
    {
        Pose plate = setting.Panels[0].Pose, probe = setting.Receiver.Pose;
        Close.Absolute(0.0, (plate.Position - WaveBench.At(0.8 + setting.At)).Length, 1e-12);
        Close.Absolute(-1.0, plate.Forward.X, 1e-12);
        Close.Absolute(0.0, (probe.Position - WaveBench.At(0.7)).Length, 1e-12);
        Close.Absolute(0.0, Vector.Dot(probe.Forward, plate.Forward), 1e-12);
    });

    [Fact]
    public void Minima_lie_half_a_wavelength_apart_and_give_the_wavelength()
    {
        // derived: c/f; a plate of 30 cm and a spreading wave move a minimum by a few tenths of a millimetre.
        Close.Relative(0.5 * WaveBench.Wavelength, Prediction.Shown("minima apart").OnBench!.Value, 0.02);
        Close.Relative(WaveBench.Wavelength, Prediction.Shown("wavelength").OnBench!.Value, 0.02);
        Close.Absolute(1.0, Prediction.Shown("half waves lost").OnBench!.Value, 0.1);
        Close.Absolute(1.0, Prediction.Shown("half waves lost").InBooks!.Value, 1e-9);
    }

    [Fact]
    public void The_slanting_way_to_a_probe_off_the_axis_is_put_right()
    {
        BenchPlan aside = Plan with { Source = Plan.Source with { Pose = Plan.Source.Pose with { Position = WaveBench.At(0.0) + new Vector(0.0, 0.25, 0.0), Turn = -0.3 } } };
        Mirrored mirror = Mirrored.In(Plan.Panels[0] with { Pose = new Pose(WaveBench.At(0.8), turn: Math.PI) });
        Setting setting = new(0.0, string.Empty, aside.Source, Plan.Receiver with { Pose = new Pose(WaveBench.At(0.7)) }, []);

        // derived: image of the source 0.8 m behind the plate, 0.25 m aside: √(0.9² + 0.25²) − √(0.7² + 0.25²)
        Close.Absolute(Math.Sqrt(0.8725) - Math.Sqrt(0.5525), mirror.Longer(setting), 1e-12);
    }

    [Fact]
    public void The_level_is_said_to_be_a_guide_only() =>
        Assert.Contains(Prediction.Limits, limit => limit.Kind == LimitKind.Untrusted && limit.Sentence.StartsWith("A guide only", StringComparison.Ordinal));

    [Fact]
    public void The_tone_comes_and_goes_and_the_lesson_tells_the_spacing()
    {
        Assert.Contains("As you move the plate", Prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Shown.Lesson(Plan));

        // derived: half of 28.48 mm
        Assert.Contains("every 1.42 cm", Shown.Lesson(Plan).WhyItFails, StringComparison.Ordinal);
        Assert.True(Prediction.Curve.Strongest.Reading.Link > 10.0 * Prediction.Curve.Weakest.Reading.Link);
    }
}
