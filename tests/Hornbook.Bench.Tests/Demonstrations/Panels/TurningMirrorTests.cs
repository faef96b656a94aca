using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

public sealed class TurningMirrorTests
{
    private const double Slanted = Math.PI / 9.0;
    private const double Frequency = 10.525e9;

    private static readonly double ThreeQuarters = 0.375 * PanelBench.Wavelength / Math.Cos(Slanted);

    [Fact]
    public void The_grid_stands_flat_before_the_mirror_with_its_strips_at_45_degrees_to_the_field()
    {
        Setting setting = new TurningMirror("strips", "plate", Slanted, null).At(PanelBench.Plan, 11e-3, 0.5, 0.0);
        Pose grid = setting.Panels.Named("strips").Pose, mirror = setting.Panels.Named("plate").Pose;
        Close.Absolute(0.0, (grid.Position - mirror.Position - (mirror.Forward * 11e-3)).Length, 1e-15);
        Close.Absolute(0.0, (grid.Forward - mirror.Forward).Length, 1e-15);
        Close.Absolute(Math.Cos(0.25 * Math.PI), Vector.Dot(grid.Up, setting.Source.Pose.Up), 1e-12);
        Close.Absolute(0.5, setting.Receiver.Pose.Roll, 1e-15);
    }

    [Theory]
    [InlineData(0.25, 0.5, 3e-3, 0.125)]
    [InlineData(0.25, 0.5, 10e-3, 0.375)]
    [InlineData(0.5, 1.0, 8e-3, 0.25)]
    [InlineData(1.0, 1.0, 2e-3, 0.5)]
    public void The_gap_for_a_path_difference_is_the_nearest_one(double difference, double repeats, double near, double expected) =>
        // derived: 2 d cos θ is the difference of the paths.
        Close.Relative(expected * PanelBench.Wavelength / Math.Cos(Slanted), new TurningMirror("strips", "plate", Slanted, null).GapOf(PanelBench.Wavelength, near, difference, repeats), 1e-12);

    [Theory]
    [InlineData(3e-3)]
    [InlineData(8e-3)]
    [InlineData(12e-3)]
    public void An_ideal_grid_turns_the_field_by_the_sine_of_half_the_phase(double gap)
    {
        // Strips so fine that the grid neither leaks nor delays: t along is about 2 (p/λ) ln cosec(πw/2p), 4e-4 (H. Lamb 1898, from memory).
        BenchPanel fine = PanelBench.Plan.Panels.Named("strips") with { Panel = new Panel(new RectangularSurface(0.3, 0.3), new StripGrid(1.5e-5, 0.75e-5)) };
        BenchPlan plan = PanelBench.Plan with { Panels = [fine, PanelBench.Plan.Panels.Named("plate")] };
        TurningMirror parts = new("strips", "plate", Slanted, null);
        (Complex across, Complex up) = parts.Returned(Frequency, parts.At(plan, gap, 0.0, 0.0));

        // derived: the two parts (1, 1)/√2 and (−1, 1)/√2 come back 2 k d cos θ apart, so across sin² and up cos² of half of that. The slant of the
        // strips in the oblique wave's eyes, cos θ, leaves a few thousandths.
        double half = 2.0 * Math.PI / PanelBench.Wavelength * gap * Math.Cos(Slanted);
        Close.Absolute(Math.Pow(Math.Sin(half), 2.0), Math.Pow(across.Magnitude, 2.0), 0.01);
        Close.Absolute(Math.Pow(Math.Cos(half), 2.0), Math.Pow(up.Magnitude, 2.0), 0.01);
    }

    [Fact]
    public void Strips_that_delay_turn_the_field_across_at_a_narrower_gap_than_ideal_ones()
    {
        TurningMirror parts = new("strips", "plate", Slanted, null);
        double[] gaps = [.. Moves.Evenly(5e-3, 9e-3, 41)];
        double[] across = [.. gaps.Select(gap => Math.Pow(parts.Returned(Frequency, parts.At(PanelBench.Plan, gap, 0.0, 0.0)).Across.Magnitude, 2.0))];

        // N. Marcuvitz, Waveguide Handbook, 1951, from memory: X = 0.0615 along, B = 0.2461 across, each before a shorted line of the length d cos θ;
        // derived: the two reflections are opposed at 6.69 mm. Two tenths of a millimetre for the slant of the wave in the grid's eyes.
        Close.Absolute(6.69e-3, Extremes.Maxima(gaps, across).Single(), 0.2e-3);
    }

    [Fact]
    [Trait("Cost", "Slow")]
    public void However_the_receiver_is_rolled_it_hears_the_circular_wave_and_of_the_mirror_alone_nothing_when_crossed()
    {
        CircularPolarisationDemonstration demonstration = new("circular", "strips", "plate", ThreeQuarters, Slanted, 0.0, Math.PI, 13);
        Prediction prediction = Predicting.Of(PanelBench.Plan, demonstration);
        Comparison[] numbers = [.. Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons];

        // derived: a circle is 0 dB and half of the power; a grid that leaks a little and a beam of many angles leave 2 dB and 1 dB.
        Close.Absolute(0.0, numbers[0].OnBench!.Value, 2.0);
        Close.Absolute(numbers[0].InBooks!.Value, numbers[0].OnBench!.Value, 1.0);
        Close.Relative(ThreeQuarters, numbers[1].InBooks!.Value, 1e-12);
        Close.Absolute(Decibels.FromRatio(0.5), numbers[2].OnBench!.Value, 1.0);

        Setting alone = new TurningMirror("strips", "plate", Slanted, null).At(PanelBench.Plan, null, 0.5 * Math.PI, 0.0);
        double crossed = LinkOf(alone);
        Assert.True(crossed < 0.01 * prediction.Curve.Points.Min(point => point.Reading.Link));
        Assert.Contains("However you roll", prediction.Heard, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Cost", "Slow")]
    public void A_crossed_receiver_hears_the_field_turned_across_at_half_a_wave_and_not_at_a_whole_one()
    {
        GridGapDemonstration demonstration = new("gap", "strips", "plate", Slanted, 4e-3, 17e-3, 11);
        Prediction prediction = Predicting.Of(PanelBench.Plan, demonstration);
        Comparison[] numbers = [.. Assert.IsType<LawEvaluation>(prediction.Evaluation).Comparisons];
        Close.Relative(0.25 * PanelBench.Wavelength / Math.Cos(Slanted), numbers[0].InBooks!.Value, 1e-12);

        // The strips delay the part that passes and the part that returns: an ideal grid's gap is about a millimetre too wide at the turn across.
        Close.Absolute(numbers[0].InBooks!.Value, numbers[0].OnBench!.Value, 1.5e-3);
        Close.Absolute(0.5 * PanelBench.Wavelength / Math.Cos(Slanted), numbers[1].OnBench!.Value, 0.5e-3);
        Close.Absolute(0.0, numbers[3].OnBench!.Value, 0.5);
        Assert.Contains("swings between", prediction.Heard, StringComparison.Ordinal);
    }

    private static double LinkOf(Setting setting) =>
        Bench.Readings.Scene.Of(PanelBench.Plan).Read(setting.Source, setting.Receiver, setting.Panels).Link;
}
