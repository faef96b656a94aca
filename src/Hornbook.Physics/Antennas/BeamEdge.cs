using Hornbook.Physics.Radiation;
using MathNet.Numerics;

namespace Hornbook.Physics.Antennas;

/// <summary>Where the beam of an antenna ends towards any side.</summary>
public static class BeamEdge
{
    // Half a degree: half power is then interpolated to some hundredths of one.
    private const int Angles = 181;

    /// <summary>The angle off the axis at which the power density far away, both polarisations together, has first fallen to half of that on the axis [rad].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="side">Towards which side of the axis, own frame; any length, not along x.</param>
    /// <returns>Below π/2; null where it does not fall so far before.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The side has no part across the axis.</exception>
    public static double? HalfPower(Antenna antenna, Vector side)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        Vector across = new(0.0, side.Y, side.Z);
        if (!(across.Length > 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(side), side, $"side = {side}; must have a part across the axis");
        }

        double[] angles = Generate.LinearSpaced(Angles, 0.0, 0.5 * Math.PI);
        Vector[] directions = Array.ConvertAll(angles, angle => new Vector(Math.Cos(angle), 0.0, 0.0) + (across * (Math.Sin(angle) / across.Length)));
        ComplexVector[] fields = new ComplexVector[Angles];
        FarField.Evaluate(antenna.Currents, antenna.Wavenumber, directions, fields);
        double[] powers = Array.ConvertAll(fields, field => field.SquaredMagnitude);
        int below = Array.FindIndex(powers, power => power < 0.5 * powers[0]);
        return below < 0 ? null : angles[below - 1]
            + ((angles[below] - angles[below - 1]) * (powers[below - 1] - (0.5 * powers[0])) / (powers[below - 1] - powers[below]));
    }
}
