using CsCheck;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Readings;

public sealed class ChainWindowTests
{
    private static readonly DetectionChain Chain = GoodBench.Plan.Detection;

    [Fact]
    public void Between_its_bounds_the_tone_follows_the_wave_and_outside_it_does_not() => Gen.Double[0.3, 3.0].Sample(times =>
    {
        ChainWindow window = ChainWindow.Of(Chain);
        // A per mille beside the bound: there the state must turn.
        Assert.Equal(times < 0.999 ? ToneState.Drowned : times > 1.001 ? ToneState.Clear : Chain.Hear(times * window.Weakest.Power).State, Chain.Hear(times * window.Weakest.Power).State);
        Assert.Equal(times < 0.999 ? ToneState.Clear : times > 1.001 ? ToneState.Clipped : Chain.Hear(times * window.Strongest.Power).State, Chain.Hear(times * window.Strongest.Power).State);
    });

    [Fact]
    public void A_tone_that_falls_with_the_voltage_is_clipped_at_its_lowest()
    {
        DetectionChain falling = Chain with { Tone = new LinearTone { AtZero = 2000.0, Slope = -500.0, Lowest = 500.0, Highest = 3000.0 } };
        // derived: from 2000 Hz down to 500 at 500 Hz a volt are 3 V.
        Close.Relative(3.0, ChainWindow.Of(falling).Strongest.AmplifierVoltage, 1e-9);
    }

    [Fact]
    public void The_levels_are_those_of_the_chain()
    {
        ChainLevel level = ChainLevel.At(Chain, 1e-6);
        HeardTone heard = Chain.Hear(1e-6);
        Assert.Equal((heard.DetectorVoltage, heard.AmplifierVoltage, heard.Tone), (level.DetectorVoltage, level.AmplifierVoltage, level.Tone));
    }
}
