namespace Hornbook.Physics.Antennas;

/// <summary>Where the waves that leave an antenna seem to come from.</summary>
public static class PhaseCentre
{
    // Small enough for the curvature on the axis, large enough against rounding: the phase differs by about 1e-4 rad.
    private const double Angle = 5e-3;

    /// <summary>Distance of the phase centre behind the mouth, seen near the axis in one plane, L [m]; negative in front of it.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    /// <remarks>
    /// From a point at x = −L the phase referred to the mouth is −kL cos θ, so L = (ψ(θ) − ψ(0))/k(1 − cos θ) as θ → 0
    /// (Eq. antennas (6); the approach of [Muehldorf1970]).
    /// </remarks>
    public static double BehindMouth(Antenna antenna, PatternPlane plane)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        PatternPoint axis = FarPattern.Towards(antenna, plane, 0.0);
        PatternPoint off = FarPattern.Towards(antenna, plane, Angle);
        double lead = (off.CoPolarAmplitude / axis.CoPolarAmplitude).Phase;
        double half = Math.Sin(0.5 * Angle);
        return lead / (antenna.Wavenumber * 2.0 * half * half);
    }
}
