namespace Hornbook.Physics.Radiation.Mirrorings;

/// <summary>What maps a frame onto itself and keeps its forward axis: a mirror plane through that axis, or both one after the other.</summary>
[Flags]
internal enum Mirroring
{
    /// <summary>All stays where it is.</summary>
    None = 0,

    /// <summary>Left and right change places: y to −y.</summary>
    Sideways = 1,

    /// <summary>Up and down do: z to −z.</summary>
    Upright = 2,

    /// <summary>Both: half a turn about the forward axis.</summary>
    HalfTurn = Sideways | Upright,
}
