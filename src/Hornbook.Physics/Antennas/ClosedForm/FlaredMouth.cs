namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>The mouth of a horn as the closed forms see it: TE10 across it, with a quadratic phase in each plane.</summary>
/// <remarks>
/// Everything here has the mouth norm (convention C8): gain over the power through the mouth if the field there were a plane wave's.
/// That is about 0.1 dB below the radiated norm for horns, and 2 dB below for an open guide; the quadratic phase takes another 0.4 dB from a blunt horn.
/// </remarks>
public sealed record FlaredMouth
{
    /// <summary>A mouth.</summary>
    /// <param name="width">In the H plane, A [m]; finite, &gt; 0.</param>
    /// <param name="height">In the E plane, B [m]; finite, &gt; 0.</param>
    /// <param name="radiusH">Radius of the phase front in the H plane, ρ_H [m]; &gt; 0, +∞ where it does not flare.</param>
    /// <param name="radiusE">Radius of the phase front in the E plane, ρ_E [m]; &gt; 0, +∞ where it does not flare.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public FlaredMouth(double width, double height, double radiusH, double radiusE)
    {
        Width = Require.Positive(width);
        Height = Require.Positive(height);
        RadiusH = double.IsPositiveInfinity(radiusH) ? radiusH : Require.Positive(radiusH);
        RadiusE = double.IsPositiveInfinity(radiusE) ? radiusE : Require.Positive(radiusE);
    }

    /// <summary>In the H plane, A [m].</summary>
    public double Width { get; }

    /// <summary>In the E plane, B [m].</summary>
    public double Height { get; }

    /// <summary>Radius of the phase front in the H plane, ρ_H [m].</summary>
    public double RadiusH { get; }

    /// <summary>Radius of the phase front in the E plane, ρ_E [m].</summary>
    public double RadiusE { get; }

    /// <summary>The mouth of a horn.</summary>
    /// <param name="horn">Pyramidal, or sectoral.</param>
    /// <param name="radius">Which length of the flare counts.</param>
    public static FlaredMouth Of(Horn horn, FlareRadius radius = FlareRadius.Axial)
    {
        ArgumentNullException.ThrowIfNull(horn);
        return new FlaredMouth(
            horn.MouthWidth,
            horn.MouthHeight,
            Radius(horn.AxialRadiusH, horn.MouthWidth, radius),
            Radius(horn.AxialRadiusE, horn.MouthHeight, radius));
    }

    /// <summary>The H plane as a line, at infinity or seen from a distance.</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="distance">Of a small receiver on the axis from the mouth, R [m]; &gt; 0, +∞ for the far field.</param>
    /// <remarks>Eq. horn-closed-form (4): from a distance R the quadratic phases add, 1/ρ + 1/R. Source: [Jull1970].</remarks>
    public PhasedLine LineH(double wavelength, double distance = double.PositiveInfinity) =>
        new(LineTaper.Cosine, PhaseParameter(Width, RadiusH, wavelength, distance));

    /// <summary>The E plane as a line, at infinity or seen from a distance.</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="distance">Of a small receiver on the axis from the mouth, R [m]; &gt; 0, +∞ for the far field.</param>
    public PhasedLine LineE(double wavelength, double distance = double.PositiveInfinity) =>
        new(LineTaper.Uniform, PhaseParameter(Height, RadiusE, wavelength, distance));

    /// <summary>Directivity if the whole mouth were in phase, G0 = 32AB/(πλ²) [-]; mouth norm.</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <remarks>The efficiency of the cosine is 8/π², −0.912 dB. Source: [Balanis2016] ch. 12.</remarks>
    public double InPhaseDirectivity(double wavelength) =>
        32.0 * Width * Height / (Math.PI * Require.Positive(wavelength) * wavelength);

    /// <summary>Directivity on the axis, D = G0 R_E R_H [-]; mouth norm.</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="distance">Of a small receiver on the axis from the mouth, R [m]; &gt; 0, +∞ for the far field. Nearer than about A²/4λ it is a rough guide only.</param>
    /// <returns>
    /// At a finite distance, the gain that makes Friis' formula come out right with the distance counted from the mouth. A sectoral horn is the
    /// case in which one radius is infinite.
    /// </returns>
    /// <remarks>Eq. horn-closed-form (3). Source: [Balanis2016] ch. 13 (Schelkunoff's formula); finite distance: [Jull1970].</remarks>
    public double Directivity(double wavelength, double distance = double.PositiveInfinity) =>
        InPhaseDirectivity(wavelength) * LineE(wavelength, distance).AxialFactor * LineH(wavelength, distance).AxialFactor;

    /// <summary>Effective over geometric area of the mouth, Dλ²/(4πAB) [-]; mouth norm, at most 8/π².</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    public double ApertureEfficiency(double wavelength) =>
        Directivity(wavelength) * wavelength * wavelength / (4.0 * Math.PI * Width * Height);

    /// <summary>Half-power width in the E plane, full angle [rad]; the mouth alone, no obliquity factor.</summary>
    /// <returns>The angle, or null where the power does not fall to half of the axial one within the half space.</returns>
    public double? HalfPowerWidthE(double wavelength) => FullAngle(LineE(wavelength).HalfPowerWidth, Height / wavelength);

    /// <summary>Half-power width in the H plane, full angle [rad]; the mouth alone, no obliquity factor.</summary>
    /// <returns>The angle, or null where the power does not fall to half of the axial one within the half space.</returns>
    public double? HalfPowerWidthH(double wavelength) => FullAngle(LineH(wavelength).HalfPowerWidth, Width / wavelength);

    /// <summary>Distance of the E-plane phase centre behind the mouth [m]; 0 where the plane does not flare.</summary>
    public double PhaseCentreE(double wavelength) => Behind(LineE(wavelength), RadiusE);

    /// <summary>Distance of the H-plane phase centre behind the mouth [m]; 0 where the plane does not flare.</summary>
    public double PhaseCentreH(double wavelength) => Behind(LineH(wavelength), RadiusH);

    private static double Behind(PhasedLine line, double radius) => double.IsInfinity(radius) ? 0.0 : line.PhaseCentreShare * radius;

    private static double? FullAngle(double? width, double lengthInWaves)
    {
        double? sine = 0.5 * width / lengthInWaves;
        return sine < 1.0 ? 2.0 * Math.Asin(sine.Value) : null;
    }

    private static double PhaseParameter(double side, double radius, double wavelength, double distance)
    {
        double curvature = (1.0 / radius) + (double.IsPositiveInfinity(distance) ? 0.0 : 1.0 / Require.Positive(distance));
        return side * side * curvature / (8.0 * Require.Positive(wavelength));
    }

    private static double Radius(double axial, double side, FlareRadius radius) =>
        radius == FlareRadius.Axial ? axial : Math.Sqrt((axial * axial) + (0.25 * side * side));
}
