using Hornbook.Physics.Antennas;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Exposure;

/// <summary>Power density around an antenna, from its exact field.</summary>
public static class PowerDensity
{
    /// <summary>Plane-wave equivalent power density at a place in the antenna's own frame [W/m²].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W]; finite, ≥ 0.</param>
    /// <param name="place">Place in the antenna's own frame [m]; a quarter of a wavelength or more from the mouth.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public static double At(Antenna antenna, double incidentPower, Vector place) => ExposureField.Of(antenna, incidentPower).Density(place);

    /// <summary>The largest of |E|²/2η, η|H|²/2 and |½ Re E×H*| [W/m²].</summary>
    /// <remarks>
    /// Eq. exposure (1). Far away the three are one. Close by, limits given as field strengths look at E and at H, those given as
    /// densities at the power that flows: the largest satisfies whichever way a rule is read.
    /// </remarks>
    public static double Equivalent(FieldSample field)
    {
        double electric = 0.5 * field.Electric.SquaredMagnitude / Constants.VacuumImpedance;
        double magnetic = 0.5 * field.Magnetic.SquaredMagnitude * Constants.VacuumImpedance;
        return Math.Max(field.PowerDensity.Length, Math.Max(electric, magnetic));
    }

    /// <summary>What it would be if the place were far: P G/4πR² [W/m²], shown beside the exact value [Friis1946].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W]; finite, ≥ 0.</param>
    /// <param name="distance">On the axis, from the mouth, R [m]; finite, &gt; 0.</param>
    public static double FarAway(Antenna antenna, double incidentPower, double distance) =>
        EquivalentIsotropicPower(antenna, incidentPower) / (4.0 * Math.PI * Require.Positive(distance) * distance);

    /// <summary>The distance at which <see cref="FarAway"/> meets a density, √(P G/4πS) [m].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W]; finite, ≥ 0.</param>
    /// <param name="density">S [W/m²]; finite, &gt; 0.</param>
    public static double FarDistance(Antenna antenna, double incidentPower, double density) =>
        Math.Sqrt(EquivalentIsotropicPower(antenna, incidentPower) / (4.0 * Math.PI * Require.Positive(density)));

    /// <summary>Equivalent isotropically radiated power on the axis: incident power times realised gain [W].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W]; finite, ≥ 0.</param>
    public static double EquivalentIsotropicPower(Antenna antenna, double incidentPower)
    {
        ArgumentNullException.ThrowIfNull(antenna);
        return Require.NotNegative(incidentPower) * antenna.RealisedGain;
    }
}
