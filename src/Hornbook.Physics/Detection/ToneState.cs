namespace Hornbook.Physics.Detection;

/// <summary>What is heard, whether it is clipped or lost.</summary>
public enum ToneState
{
    /// <summary>Between the noise and the rails.</summary>
    Clear,

    /// <summary>The amplifier stands at a rail or the tone at its limit: a stronger wave sounds the same.</summary>
    Clipped,

    /// <summary>The signal is smaller than the rms noise: it sounds as if nothing came.</summary>
    Drowned,
}
