namespace Hornbook.Physics.Panels.Sheets;

/// <summary>How the electric field of a wave lies to the plane of its incidence.</summary>
public enum Polarisation
{
    /// <summary>Across it (s, TE): along the sheet at every angle.</summary>
    Across,

    /// <summary>In it (p, TM): the one with a Brewster angle.</summary>
    Within,
}
