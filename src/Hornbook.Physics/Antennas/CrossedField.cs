namespace Hornbook.Physics.Antennas;

/// <summary>How much of an antenna's wave swings the wrong way.</summary>
public static class CrossedField
{
    private const int Points = 121;

    /// <summary>The strongest crossed field of a cut within the trusted angle, over the power on the axis [-].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    public static double Strongest(Antenna antenna, PatternPlane plane)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        double axis = FarPattern.Towards(antenna, plane, 0.0).CoPolar;
        return FarPattern.Cut(antenna, plane, 0.0, FarPattern.TrustedAngle, Points).Max(p => p.CrossPolar) / axis;
    }
}
