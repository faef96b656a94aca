namespace Hornbook.Bench.Explanations;

/// <summary>A number of the bench that can be explained.</summary>
public enum ExplanationTopic
{
    /// <summary>Power delivered over power sent.</summary>
    Link,

    /// <summary>The band of the standing waves.</summary>
    Ripple,

    /// <summary>Power in the receiver's guide.</summary>
    Received,

    /// <summary>Voltage of the detector.</summary>
    Detector,

    /// <summary>Voltage after the amplifier.</summary>
    Amplifier,

    /// <summary>Frequency of the tone.</summary>
    Tone,

    /// <summary>Just-noticeable steps of pitch.</summary>
    Steps,

    /// <summary>Gains of the two antennas.</summary>
    Gain,

    /// <summary>Beam widths of the two antennas.</summary>
    BeamWidth,

    /// <summary>Where the far zone begins.</summary>
    FarZone,

    /// <summary>How far people have to stay away.</summary>
    KeepOut,

    /// <summary>The wave by way of the table top.</summary>
    TableBounce,
}
