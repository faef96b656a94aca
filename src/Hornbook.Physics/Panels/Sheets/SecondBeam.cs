namespace Hornbook.Physics.Panels.Sheets;

/// <summary>The second beam of a grid that is too coarse.</summary>
/// <remarks>Eq. strip-grids (10); [Rayleigh1907].</remarks>
internal static class SecondBeam
{
    /// <summary>Whether one leaves for a wave from a direction.</summary>
    /// <param name="period">p [m].</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="across">k_u/k.</param>
    /// <param name="along">k_v/k.</param>
    internal static bool Leaves(double period, double frequency, double across, double along)
    {
        double nearest = (FreeSpace.Wavelength(frequency) / period) - Math.Abs(across);
        return (nearest * nearest) + (along * along) < 1.0;
    }

    /// <summary>Up to this angle to the normal none does, in whatever plane the wave arrives [rad].</summary>
    internal static double NoneUpTo(double period, double frequency) =>
        Math.Asin(Math.Clamp((FreeSpace.Wavelength(frequency) / period) - 1.0, 0.0, 1.0));
}
