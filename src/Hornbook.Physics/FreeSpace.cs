namespace Hornbook.Physics;

/// <summary>A plane wave where there is nothing; air counts as nothing.</summary>
public static class FreeSpace
{
    /// <summary>λ = c/f [m].</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    public static double Wavelength(double frequency) => Constants.SpeedOfLight / Require.Positive(frequency);

    /// <summary>k = 2πf/c [1/m].</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    public static double Wavenumber(double frequency) => 2.0 * Math.PI * Require.Positive(frequency) / Constants.SpeedOfLight;
}
