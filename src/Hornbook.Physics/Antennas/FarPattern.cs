using System.Numerics;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Antennas;

/// <summary>The pattern of an antenna far away, co- and cross-polar after Ludwig's third definition [Ludwig1973].</summary>
public static class FarPattern
{
    /// <summary>Angle off the axis up to which the currents over the mouth alone predict the pattern [rad]: 60° [-].</summary>
    /// <remarks>Beyond it the currents on the outside of the walls, which the model leaves out, matter (docs/physics/antennas.md).</remarks>
    public const double TrustedAngle = Math.PI / 3.0;

    /// <summary>Both polarisations towards one direction.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    /// <param name="angle">Off the axis, positive to the left or up [rad].</param>
    /// <returns>Amplitudes whose squared magnitude is directivity [-]; phase refers to the centre of the mouth.</returns>
    public static PatternPoint Towards(Antenna antenna, PatternPlane plane, double angle)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        (double sinPhi, double cosPhi) = Math.SinCos(Azimuth(plane));
        (double sin, double cos) = Math.SinCos(Require.Finite(angle));
        Vector direction = new(cos, sin * cosPhi, sin * sinPhi);
        Vector theta = new(-sin, cos * cosPhi, cos * sinPhi);
        Vector phi = new(0.0, -sinPhi, cosPhi);
        ComplexVector field = FarField.At(antenna.Currents, antenna.Wavenumber, direction);
        double toDirectivity = Math.Sqrt(2.0 * Math.PI / Constants.VacuumImpedance);
        Complex co = field.Component((theta * sinPhi) + (phi * cosPhi)) * toDirectivity;
        Complex cross = field.Component((theta * cosPhi) - (phi * sinPhi)) * toDirectivity;
        return new PatternPoint(angle, co, cross);
    }

    /// <summary>A cut, evenly spaced.</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="plane">The cut.</param>
    /// <param name="from">First angle [rad].</param>
    /// <param name="to">Last angle [rad].</param>
    /// <param name="points">How many; ≥ 2.</param>
    public static IReadOnlyList<PatternPoint> Cut(Antenna antenna, PatternPlane plane, double from, double to, int points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 2);
        PatternPoint[] cut = new PatternPoint[points];
        for (int i = 0; i < points; i++)
        {
            cut[i] = Towards(antenna, plane, from + ((to - from) * i / (points - 1)));
        }

        return cut;
    }

    private static double Azimuth(PatternPlane plane) => plane switch
    {
        PatternPlane.Electric => 0.5 * Math.PI,
        PatternPlane.Magnetic => 0.0,
        _ => 0.25 * Math.PI,
    };
}
