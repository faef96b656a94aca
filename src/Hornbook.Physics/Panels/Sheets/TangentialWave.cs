using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A plane wave as a sheet sees it: its wave vector along the sheet.</summary>
/// <param name="Wavenumber">k [1/m].</param>
/// <param name="Across">k_u, across the strips [1/m].</param>
/// <param name="Along">k_v, along the strips [1/m].</param>
internal readonly record struct TangentialWave(double Wavenumber, double Across, double Along)
{
    internal static TangentialWave Of(double frequency, double angle, double azimuth)
    {
        double k = 2.0 * Math.PI * Require.Positive(frequency) / Constants.SpeedOfLight;
        double along = k * Math.Sin(Incidence.Checked(angle));
        (double sin, double cos) = Math.SinCos(Require.Finite(azimuth));
        return new TangentialWave(k, along * cos, along * sin);
    }

    /// <summary>Normal wavenumber k_z over k of the wave whose across part is shifted; its imaginary part is not positive.</summary>
    internal Complex Normal(double shift)
    {
        double across = Across + shift;
        double squared = 1.0 - (((across * across) + (Along * Along)) / (Wavenumber * Wavenumber));
        return squared >= 0.0 ? Math.Sqrt(squared) : new Complex(0.0, -Math.Sqrt(-squared));
    }

    /// <summary>Wave impedance over that of vacuum between tangential field and current, of the wave whose across part is shifted. Eq. strip-grids (1).</summary>
    internal TangentialMatrix Impedance(double shift)
    {
        double u = (Across + shift) / Wavenumber, v = Along / Wavenumber;
        Complex normal = Normal(shift);
        return new TangentialMatrix((1.0 - (u * u)) / normal, -u * v / normal, -u * v / normal, (1.0 - (v * v)) / normal);
    }
}
