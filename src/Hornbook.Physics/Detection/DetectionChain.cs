namespace Hornbook.Physics.Detection;

/// <summary>Detector, amplifier and tone in a row.</summary>
/// <param name="Detector">Power in the guide to volts.</param>
/// <param name="Amplifier">Volts to more volts.</param>
/// <param name="Tone">Volts to hertz.</param>
public sealed record DetectionChain(IDetectorLaw Detector, Amplifier Amplifier, ToneLaw Tone)
{
    /// <summary>What the chain makes of a power in the receiver's guide [W].</summary>
    public HeardTone Hear(double power) => throw new NotImplementedException();
}

/// <summary>What is heard, whether it is clipped or lost.</summary>
public enum ToneState
{
    /// <summary>Between the noise and the rails.</summary>
    Clear,

    /// <summary>The amplifier stands at a rail or the tone at its limit: a stronger wave sounds the same.</summary>
    Clipped,

    /// <summary>The signal is smaller than the noise: it sounds as if nothing came.</summary>
    Drowned,
}

/// <summary>What the chain makes of a power.</summary>
/// <param name="DetectorVoltage">At the detector [V].</param>
/// <param name="AmplifierVoltage">At the amplifier's output, inside its rails [V].</param>
/// <param name="AmplifierNoise">Rms noise at the amplifier's output [V].</param>
/// <param name="Tone">Frequency [Hz].</param>
/// <param name="JitterCents">Rms wander of the pitch from the noise [cents].</param>
/// <param name="State">Clear, clipped or drowned.</param>
public readonly record struct HeardTone(
    double DetectorVoltage, double AmplifierVoltage, double AmplifierNoise, double Tone, double JitterCents, ToneState State);
