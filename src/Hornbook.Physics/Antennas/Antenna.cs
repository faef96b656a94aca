using System.Globalization;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;

namespace Hornbook.Physics.Antennas;

/// <summary>An antenna at a frequency: its shape turned into currents over its mouth, normalised to one watt radiated.</summary>
/// <remarks>
/// The norm matters: the power through the mouth and the power that the mouth's currents radiate differ by 0.1 dB for horns and by
/// two decibels for an open guide, because the currents on the outside of the walls are left out. The radiated norm is used
/// everywhere; <see cref="MouthNormDirectivity"/> is shown beside it, since the closed Fresnel-integral forms have that norm.
/// </remarks>
public sealed class Antenna
{
    private readonly Lazy<int[]> _signs;

    private Antenna(AntennaShape shape, double frequency, CurrentSamples unit)
    {
        Shape = shape;
        Frequency = frequency;
        double radiated = FarField.RadiatedPower(unit, Wavenumber);
        double intensity = FarField.Intensity(unit, Wavenumber, Vector.UnitX);
        Currents = unit.Scaled(1.0 / Math.Sqrt(radiated));
        _signs = new Lazy<int[]>(() => CurrentSymmetry.Signs(Currents));
        Directivity = 4.0 * Math.PI * intensity / radiated;
        MouthNormDirectivity = 4.0 * Math.PI * intensity / MouthCurrents.PowerThroughMouth(shape, frequency);
        Reflection = shape.MeasuredReflection ?? FeedReflection.Magnitude(shape, frequency);
        OhmicEfficiency = WallLoss.Efficiency(shape, frequency);
    }

    /// <summary>What was built.</summary>
    public AntennaShape Shape { get; }

    /// <summary>Frequency [Hz].</summary>
    public double Frequency { get; }

    /// <summary>Free-space wavelength, λ [m].</summary>
    public double Wavelength => FreeSpace.Wavelength(Frequency);

    /// <summary>Free-space wavenumber, k = 2π/λ [1/m].</summary>
    public double Wavenumber => 2.0 * Math.PI / Wavelength;

    /// <summary>Equivalent currents over the mouth in the antenna's own frame (mouth centre at the origin), for one watt radiated.</summary>
    public CurrentSamples Currents { get; }

    /// <summary>What a mirroring in its own frame makes of its currents: 1 leaves them as they are, −1 makes them their opposite, 0 neither.</summary>
    internal int Sign(Mirroring mirroring) => _signs.Value[(int)mirroring];

    /// <summary>Directivity on the axis, D = 4πU/P with the radiated power P [-] (radiated norm).</summary>
    public double Directivity { get; }

    /// <summary>4πU/P with the power P through the mouth [-] (mouth norm), as in the closed forms.</summary>
    public double MouthNormDirectivity { get; }

    /// <summary>Magnitude of the reflection seen from the guide, |Γ| [-]: measured where the shape says so, else estimated.</summary>
    public double Reflection { get; }

    /// <summary>Share of the incident power that is not reflected, 1 − |Γ|² [-].</summary>
    public double MismatchEfficiency => 1.0 - (Reflection * Reflection);

    /// <summary>Share of the accepted power that is not lost in the walls [-].</summary>
    public double OhmicEfficiency { get; }

    /// <summary>Gain with ohmic loss and without mismatch, G = D × ohmic efficiency [-] [IeeeStd145].</summary>
    public double Gain => Directivity * OhmicEfficiency;

    /// <summary>Realised gain, G (1 − |Γ|²) [-]: what counts on the bench.</summary>
    public double RealisedGain => Gain * MismatchEfficiency;

    /// <summary>Effective area on the axis over the area of the mouth, D λ²/4πAB [-].</summary>
    public double ApertureEfficiency => Directivity * Wavelength * Wavelength / (4.0 * Math.PI * Shape.MouthWidth * Shape.MouthHeight);

    /// <summary>The customary beginning of the far zone, 2D²/λ with D the larger side of the mouth [m] (common practice, no source).</summary>
    public double FarDistance => 2.0 * Shape.LargerSide * Shape.LargerSide / Wavelength;

    /// <summary>An antenna at a frequency.</summary>
    /// <param name="shape">What was built.</param>
    /// <param name="frequency">Frequency [Hz]; above the guide's cut-off.</param>
    /// <param name="refinement">Multiplies the points along each side of the mouth, for convergence studies [-]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide does not carry a wave at this frequency.</exception>
    public static Antenna At(AntennaShape shape, double frequency, double refinement = 1.0)
    {
        ArgumentNullException.ThrowIfNull(shape);
        Require.Positive(refinement);
        double cutoff = shape.Guide.CutoffFrequency;
        if (!(double.IsFinite(frequency) && frequency > cutoff))
        {
            throw new ArgumentOutOfRangeException(nameof(frequency), frequency, string.Create(
                CultureInfo.InvariantCulture, $"frequency = {frequency} Hz; the guide carries a wave only above its cut-off, {cutoff:G6} Hz"));
        }

        return new Antenna(shape, frequency, MouthCurrents.Of(shape, frequency, refinement));
    }

    /// <summary>Directivity towards a direction of the antenna's own frame [-] (radiated norm).</summary>
    /// <param name="direction">Unit vector, own frame.</param>
    public double DirectivityTowards(Vector direction) => 4.0 * Math.PI * FarField.Intensity(Currents, Wavenumber, direction);
}
