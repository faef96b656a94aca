namespace Hornbook.Bench.Beginnings;

/// <summary>Which antennas somebody who begins has, or is going to build.</summary>
public enum AntennaSet
{
    /// <summary>A horn that sends and an open guide that receives.</summary>
    HornAndOpenGuide,

    /// <summary>Two horns alike.</summary>
    TwoHorns,

    /// <summary>A large horn that sends, an open guide that receives, and a small horn to change with.</summary>
    TwoSizesAndOpenGuide,

    /// <summary>Two pieces of guide, cut square: nothing has to be built.</summary>
    OpenGuides,
}
