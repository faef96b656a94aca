using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Antennas;

/// <summary>What is left of the gain close by.</summary>
public static class NearZoneGain
{
    /// <summary>Gain that a small probe on the axis finds at a distance, 4πR² S/P with S the exact power density along the axis [-].</summary>
    /// <param name="antenna">The antenna; ohmic loss counts, mismatch does not.</param>
    /// <param name="distance">From the mouth, R [m]; &gt; 0.</param>
    public static double OnAxis(Antenna antenna, double distance)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        Span<FieldSample> field = stackalloc FieldSample[1];
        RadiatedField.Evaluate(antenna.Currents, antenna.Wavenumber, [new Vector(Require.Positive(distance), 0.0, 0.0)], field);
        return 4.0 * Math.PI * distance * distance * field[0].PowerDensity.X * antenna.OhmicEfficiency;
    }
}
