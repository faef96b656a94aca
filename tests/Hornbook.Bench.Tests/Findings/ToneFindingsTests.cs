using System.Globalization;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Detection;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class ToneFindingsTests
{
    [Fact]
    public void A_clipped_tone_spoils_and_the_gain_that_is_told_mends_it()
    {
        BenchPlan plan = Checking.Bare.WithAmplifier(a => a with { Gain = 500.0 });
        Finding finding = Checking.The("tone-clipped", plan);
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Equal("amplifier.gain", finding.Mend!.Key);
        double gain = double.Parse(finding.Mend.NewText!, CultureInfo.InvariantCulture);
        Checking.None("tone-clipped", plan.WithAmplifier(a => a with { Gain = gain }));
        Assert.InRange(gain, 60.0, 500.0);
    }

    [Fact]
    public void A_tone_law_that_falls_clips_at_its_lowest_tone()
    {
        LinearTone falling = new() { AtZero = 2000.0, Lowest = 300.0, Highest = 3000.0, Slope = -400.0 };
        BenchPlan plan = Checking.Bare with { Detection = Checking.Bare.Detection with { Tone = falling } };
        Finding finding = Checking.The("tone-clipped", plan);
        Assert.Contains("300 Hz", finding.Wrong);
        double gain = double.Parse(finding.Mend!.NewText!, CultureInfo.InvariantCulture);
        Checking.None("tone-clipped", plan.WithAmplifier(a => a with { Gain = gain }));
    }

    [Fact]
    public void A_tone_held_at_its_weak_end_is_told_apart()
    {
        BenchPlan plan = Checking.Bare.WithAmplifier(a => new Amplifier(a.Gain, -6.0, 0.0, 8.0, a.NoiseDensity, a.Bandwidth));
        Finding finding = Checking.The("tone-at-bottom", plan);
        Assert.Equal("amplifier.offset", finding.Mend!.Key);
        Checking.None("tone-clipped", plan);
    }

    [Fact]
    public void A_signal_below_the_noise_spoils_and_a_narrower_band_mends_it()
    {
        BenchPlan plan = Drowned(30e3);
        Finding finding = Checking.The("tone-drowned", plan);
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Equal("amplifier.bandwidth", finding.Mend!.Key);
        double bandwidth = double.Parse(finding.Mend.NewText!.Split(' ')[0], CultureInfo.InvariantCulture);
        Checking.None("tone-drowned", Drowned(bandwidth));
    }

    [Fact]
    public void Where_no_band_would_help_more_power_is_asked_for() =>
        Assert.Contains("must arrive", Checking.The("tone-drowned", Drowned(1.0, 1e-18)).Mend!.Move);

    [Fact]
    public void A_tone_that_wanders_is_told_to_narrow_its_band()
    {
        BenchPlan plan = Checking.Bare.WithAmplifier(a => a with { NoiseDensity = 100e-6, Bandwidth = 1000.0 });
        Finding finding = Checking.The("tone-wanders", plan);
        Assert.Equal(Severity.Weakens, finding.Severity);
        double bandwidth = double.Parse(finding.Mend!.NewText!.Split(' ')[0], CultureInfo.InvariantCulture);
        Checking.None("tone-wanders", plan.WithAmplifier(a => a with { Bandwidth = 0.9 * bandwidth }));
    }

    [Fact]
    public void A_detector_driven_beyond_what_is_known_of_it_weakens_the_bench()
    {
        BenchPlan plan = Checking.Bare with { Source = Checking.Bare.Source with { Power = 2.0, WorstCasePower = 2.0 } };
        Assert.Equal(Severity.Weakens, Checking.The("detector-beyond-law", plan).Severity);
    }

    [Fact]
    public void A_detector_below_its_calibration_is_a_note()
    {
        CalibrationTable table = new([new(1e-3, 0.1), new(1e-2, 0.8), new(1e-1, 5.0)], 8e3);
        BenchPlan plan = Checking.Bare with { Detection = Checking.Bare.Detection with { Detector = table } };
        Assert.Equal(Severity.Note, Checking.The("detector-below-law", plan).Severity);
    }

    private static BenchPlan Drowned(double bandwidth, double power = 1e-8)
    {
        BenchPlan plan = Checking.Bare.WithAmplifier(a => a with { Bandwidth = bandwidth });
        return plan with { Source = plan.Source with { Power = power } };
    }
}
