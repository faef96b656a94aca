using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Readings;

/// <summary>Between which levels the tone of a chain follows the wave: below it is lost in the noise, above it is clipped.</summary>
/// <param name="Weakest">Where the signal equals the rms noise.</param>
/// <param name="Strongest">Where the amplifier reaches its rail or the tone the end of its range, whichever comes first.</param>
public sealed record ChainWindow(ChainLevel Weakest, ChainLevel Strongest)
{
    /// <summary>The window of a chain.</summary>
    public static ChainWindow Of(DetectionChain chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        return new ChainWindow(ChainLevel.At(chain, chain.WeakestPower), ChainLevel.At(chain, StrongestPower(chain)));
    }

    private static double StrongestPower(DetectionChain chain)
    {
        double ceiling = Math.Min(chain.Amplifier.UpperRail, Math.Max(chain.Tone.Voltage(chain.Tone.Highest), chain.Tone.Voltage(chain.Tone.Lowest)));
        return chain.Detector.Power((ceiling - chain.Amplifier.Offset) / chain.Amplifier.Gain);
    }
}

/// <summary>One and the same wave along the chain.</summary>
/// <param name="Power">In the receiver's guide [W].</param>
/// <param name="DetectorVoltage">At the detector [V].</param>
/// <param name="AmplifierVoltage">At the amplifier's output [V].</param>
/// <param name="Tone">Frequency [Hz].</param>
public sealed record ChainLevel(double Power, double DetectorVoltage, double AmplifierVoltage, double Tone)
{
    /// <summary>What a power in the guide [W] gives along a chain.</summary>
    public static ChainLevel At(DetectionChain chain, double power)
    {
        ArgumentNullException.ThrowIfNull(chain);
        HeardTone heard = chain.Hear(power);
        return new ChainLevel(power, heard.DetectorVoltage, heard.AmplifierVoltage, heard.Tone);
    }
}
