namespace Hornbook.Physics.Guides;

/// <summary>How well a guide suits a frequency, and what follows.</summary>
public enum GuideUse
{
    /// <summary>Inside the recommended band: TE10 alone travels, far enough from both ends.</summary>
    SingleMode,

    /// <summary>
    /// TE10 alone travels, but near its cut-off (guide wavelength and loss change fast with frequency, transitions reflect)
    /// or near the next mode (a bend or probe feels it although it does not travel).
    /// </summary>
    OutsideRecommendedBand,

    /// <summary>Nothing travels: the field dies out along the guide, and a horn on it would not be fed.</summary>
    BelowCutoff,

    /// <summary>More than one mode travels: what leaves the mouth depends on every joint before it, and no prediction from TE10 holds.</summary>
    Overmoded,
}
