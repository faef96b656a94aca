using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Detection;
using Xunit;

namespace Hornbook.Bench.Tests.Findings;

public sealed class DemonstrationFindingsTests
{
    private static readonly BeamWidthDemonstration BeamWidth = GoodBench.BeamWidth with { Points = 21 };
    private static readonly DistanceDemonstration Distance = GoodBench.Distance with { Points = 11 };
    private static readonly PolarisationDemonstration Polarisation = GoodBench.Polarisation with { Points = 10 };

    [Fact]
    public void A_beam_width_with_a_flat_top_is_spoilt_and_says_where_and_which_gain_mends_it()
    {
        BenchPlan plan = With(BeamWidth).WithAmplifier(a => a with { Gain = 300.0 });
        Finding finding = Checking.The("demonstration-clipped", plan);
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Matches("from −.*° to .*°", finding.Wrong);
        Checking.None("demonstration-clipped", plan.WithAmplifier(a => a with { Gain = Gain(finding) }));
    }

    [Fact]
    public void A_distance_law_clipped_at_its_near_end_only_is_weakened() => Assert.Equal(
        Severity.Weakens, Checking.The("demonstration-clipped", With(Distance).WithAmplifier(a => a with { Gain = 64.0 })).Severity);

    [Fact]
    public void A_change_of_antennas_with_one_clipped_is_spoilt()
    {
        Finding finding = Checking.The("demonstration-clipped", With(GoodBench.Gain).WithAmplifier(a => a with { Gain = 120.0 }));
        Assert.Equal(Severity.Spoils, finding.Severity);
        Assert.Contains("with 'horn'", finding.Wrong);
    }

    [Fact]
    public void A_far_end_lost_in_the_noise_weakens_a_distance_law()
    {
        BenchPlan plan = With(Distance).WithAmplifier(a => a with { NoiseDensity = 100e-6, Bandwidth = 500e3 });
        Finding finding = Checking.The("demonstration-drowned", plan);
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("to 1.4 m", finding.Wrong);
    }

    [Fact]
    public void A_polarisation_that_vanishes_across_is_as_it_should_be() => Checking.None("demonstration-drowned", With(Polarisation));

    [Fact]
    public void A_beam_width_lost_at_half_power_is_spoilt() => Assert.Equal(
        Severity.Spoils,
        Checking.The("demonstration-drowned", With(BeamWidth).WithAmplifier(a => a with { NoiseDensity = 100e-6, Bandwidth = 300e3 })).Severity);

    [Fact]
    public void A_pitch_that_hardly_moves_is_told_to_move_more()
    {
        BenchPlan plan = With(Distance).WithAmplifier(a => a with { Gain = 0.3 });
        Finding finding = Checking.The("pitch-range-small", plan);
        Assert.Contains("just-noticeable steps", finding.Wrong);
        Checking.None("pitch-range-small", plan.WithAmplifier(a => a with { Gain = Gain(finding) }));
    }

    [Fact]
    public void A_tone_law_too_flat_for_any_gain_is_told_to_be_steeper()
    {
        LinearTone flat = new() { AtZero = 200.0, Lowest = 100.0, Highest = 3000.0, Slope = 1.0 };
        BenchPlan plan = With(Distance) with { Detection = Checking.Good.Detection with { Tone = flat, Amplifier = Checking.Good.Detection.Amplifier with { Gain = 80.0 } } };
        Assert.Equal("tone.slope", Checking.The("pitch-range-small", plan).Mend!.Key);
    }

    [Fact]
    public void A_sweep_that_misses_half_power_is_told_how_far_to_go()
    {
        Finding finding = Checking.The("half-power-not-reached", With(BeamWidth with { From = 0.0, To = 30.0 * GoodBench.Degree }));
        Assert.Equal(Severity.Weakens, finding.Severity);
        // The horn's own width is 21.4°, and the sweep is to reach that far to either side: as the pattern of that antenna has it.
        Assert.Contains("from −21.4° to 21.4°", finding.Mend!.Move);
    }

    [Fact]
    public void A_distance_law_bent_by_the_horns_says_where_its_zero_lies()
    {
        Finding finding = Checking.The("distance-law-bent", With(Distance with { From = 0.2, To = 0.6 }));
        Assert.Equal(Severity.Weakens, finding.Severity);
        Assert.Contains("behind the mouths", finding.Consequence);
        Assert.StartsWith("Add ", finding.Mend!.Move, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gain_read_in_the_near_zone_is_misread()
    {
        BenchPlan plan = With(GoodBench.Gain).WithReceiver(p => p with { Position = p.Position with { X = 0.5 } });
        Assert.Contains("'open'", Checking.The("gain-misread", plan).Wrong);
    }

    [Fact]
    public void A_roll_that_stops_before_the_null_is_told_to_go_on()
    {
        Finding finding = Checking.The("null-not-reached", With(Polarisation with { To = 60.0 * GoodBench.Degree }));
        // cos² 60° = ¼: 6 dB, derived.
        Assert.Contains("6 dB only", finding.Wrong);
        Assert.Contains("90°", finding.Mend!.Move);
    }

    private static BenchPlan With(Demonstration demonstration) => Checking.Good with { Demonstrations = [demonstration] };

    private static double Gain(Finding finding)
    {
        Assert.Equal("amplifier.gain", finding.Mend!.Key);
        return double.Parse(finding.Mend.NewText!, CultureInfo.InvariantCulture);
    }
}
