namespace Hornbook.Bench.Demonstrations;

/// <summary>What sort of limit.</summary>
public enum LimitKind
{
    /// <summary>The amplifier or the tone stands at its end: a stronger wave sounds the same.</summary>
    Clipped,

    /// <summary>The signal is smaller than the noise.</summary>
    Drowned,

    /// <summary>The antennas are within 2D²/λ of each other.</summary>
    NearZone,

    /// <summary>Standing waves between the mouths move the reading.</summary>
    Ripple,

    /// <summary>Directions for which the prediction is a guide only.</summary>
    Untrusted,

    /// <summary>Powers for which the detector's law is not backed by its parameters.</summary>
    Detector,
}
