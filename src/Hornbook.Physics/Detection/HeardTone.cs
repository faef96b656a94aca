namespace Hornbook.Physics.Detection;

/// <summary>What the chain makes of a power.</summary>
/// <param name="DetectorVoltage">At the detector [V].</param>
/// <param name="AmplifierVoltage">At the amplifier's output, inside its rails [V].</param>
/// <param name="AmplifierNoise">Rms noise at the amplifier's output, as it is between the rails [V].</param>
/// <param name="Tone">Frequency [Hz].</param>
/// <param name="JitterCents">Rms wander of the pitch from the noise [cents]; 0 where it is clipped.</param>
/// <param name="State">Clear, clipped or drowned.</param>
public readonly record struct HeardTone(
    double DetectorVoltage, double AmplifierVoltage, double AmplifierNoise, double Tone, double JitterCents, ToneState State)
{
    /// <summary>The nearest note of the tone.</summary>
    public Note Note => Note.Nearest(Tone);
}
