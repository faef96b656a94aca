using Hornbook.Physics.Antennas;

namespace Hornbook.Physics.Exposure;

/// <summary>Power density around an antenna, from its exact field.</summary>
public static class PowerDensity
{
    /// <summary>Plane-wave equivalent power density at a place in the antenna's own frame [W/m²].</summary>
    /// <param name="antenna">The antenna.</param>
    /// <param name="incidentPower">Power that its guide brings [W].</param>
    /// <param name="place">Place in the antenna's own frame [m].</param>
    public static double At(Antenna antenna, double incidentPower, Vector place) => throw new NotImplementedException();
}
