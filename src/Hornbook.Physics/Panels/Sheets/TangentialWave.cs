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
}
