namespace Hornbook.Physics.Exposure;

/// <summary>The simple estimates of power density near an aperture of OET Bulletin 65, edition 97-01 [Oet65]; shown beside the exact field.</summary>
/// <remarks>The formulas from memory, their order checked against the text.</remarks>
public static class ApertureFormulas
{
    /// <summary>The most that can be at the mouth, 4P/A [W/m²].</summary>
    /// <param name="power">P [W]; finite, ≥ 0.</param>
    /// <param name="area">Of the mouth, A [m²]; finite, &gt; 0.</param>
    public static double SurfaceDensity(double power, double area) => 4.0 * Require.NotNegative(power) / Require.Positive(area);

    /// <summary>How far the near zone reaches, D²/4λ [m]; not the 2D²/λ at which the far zone is usually taken to begin.</summary>
    /// <param name="diameter">D [m]; finite, &gt; 0.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    public static double NearZoneEnd(double diameter, double wavelength) =>
        Require.Positive(diameter) * diameter / (4.0 * Require.Positive(wavelength));

    /// <summary>The most that can be on the axis in the near zone, 16ηP/πD² [W/m²].</summary>
    /// <param name="power">P [W]; finite, ≥ 0.</param>
    /// <param name="diameter">D [m]; finite, &gt; 0.</param>
    /// <param name="efficiency">Aperture efficiency, η [-]; over 0 to 1.</param>
    public static double NearZoneDensity(double power, double diameter, double efficiency) =>
        16.0 * Require.Within(efficiency, double.Epsilon, 1.0) * Require.NotNegative(power) / (Math.PI * Require.Positive(diameter) * diameter);

    /// <summary>Where the far zone begins, 0.6 D²/λ [m].</summary>
    /// <param name="diameter">D [m]; finite, &gt; 0.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    public static double FarZoneBegin(double diameter, double wavelength) =>
        0.6 * Require.Positive(diameter) * diameter / Require.Positive(wavelength);

    /// <summary>Between the two, S_near R_near/R [W/m²].</summary>
    /// <param name="nearDensity">S_near [W/m²]; finite, ≥ 0.</param>
    /// <param name="nearEnd">R_near [m]; finite, &gt; 0.</param>
    /// <param name="distance">R [m]; finite, &gt; 0.</param>
    public static double TransitionDensity(double nearDensity, double nearEnd, double distance) =>
        Require.NotNegative(nearDensity) * Require.Positive(nearEnd) / Require.Positive(distance);

    /// <summary>In the far zone, PG/4πR² [W/m²].</summary>
    /// <param name="power">P [W]; finite, ≥ 0.</param>
    /// <param name="gain">G [-]; finite, ≥ 0.</param>
    /// <param name="distance">R [m]; finite, &gt; 0.</param>
    public static double FarDensity(double power, double gain, double distance) =>
        Require.NotNegative(power) * Require.NotNegative(gain) / (4.0 * Math.PI * Require.Positive(distance) * distance);
}
