using System.Numerics;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Guides;

/// <summary>The TE10 wave of a guide at a frequency; below its cut-off, the field that dies out instead.</summary>
/// <remarks>Every number is defined on both sides of the cut-off, so that an unfit frequency is a finding and not an error.</remarks>
public sealed record GuideWave
{
    private GuideWave(RectangularGuide guide, double frequency, double relativePermittivity)
    {
        Guide = guide;
        Frequency = frequency;
        RelativePermittivity = relativePermittivity;
    }

    /// <summary>The guide.</summary>
    public RectangularGuide Guide { get; }

    /// <summary>f [Hz].</summary>
    public double Frequency { get; }

    /// <summary>Of the filling, ε_r [-].</summary>
    public double RelativePermittivity { get; }

    /// <summary>Cut-off of TE10 in the filled guide, f_c [Hz].</summary>
    public double CutoffFrequency => Guide.CutoffFrequency / Math.Sqrt(RelativePermittivity);

    /// <summary>The second mode that begins to travel; its cut-off ends the single-mode range.</summary>
    public GuideMode NextMode => GuideModes.First(Guide, 2, RelativePermittivity)[1];

    /// <summary>Where the guide is meant to be used.</summary>
    public FrequencyBand RecommendedBand => StandardGuides.RecommendedBand(Guide).Scaled(1.0 / Math.Sqrt(RelativePermittivity));

    /// <summary>Where exactly one mode travels.</summary>
    public FrequencyBand SingleModeBand
    {
        get
        {
            IReadOnlyList<GuideMode> modes = GuideModes.First(Guide, 2, RelativePermittivity);
            return new FrequencyBand(modes[0].CutoffFrequency, modes[1].CutoffFrequency);
        }
    }

    /// <summary>How well the guide suits the frequency.</summary>
    public GuideUse Use
    {
        get
        {
            if (!Travels)
            {
                return GuideUse.BelowCutoff;
            }

            if (Frequency > NextMode.CutoffFrequency)
            {
                return GuideUse.Overmoded;
            }

            return RecommendedBand.Contains(Frequency) ? GuideUse.SingleMode : GuideUse.OutsideRecommendedBand;
        }
    }

    /// <summary>Whether TE10 travels.</summary>
    public bool Travels => Frequency > CutoffFrequency;

    /// <summary>Propagation constant γ = α + jβ without wall loss [1/m]: jβ above cut-off, α (real) below.</summary>
    /// <remarks>Eq. guides (2): γ = √((π/a)² − k²), k = 2πf√ε_r/c. Source: [Pozar2012] § 3.3.</remarks>
    public Complex PropagationConstant
    {
        get
        {
            double squared = (CutoffWavenumber * CutoffWavenumber) - (Wavenumber * Wavenumber);
            return squared > 0.0 ? new Complex(Math.Sqrt(squared), 0.0) : new Complex(0.0, Math.Sqrt(-squared));
        }
    }

    /// <summary>Length of the wave in the guide, λ_g = 2π/β [m]; +∞ below cut-off.</summary>
    public double GuideWavelength => Travels ? 2.0 * Math.PI / PropagationConstant.Imaginary : double.PositiveInfinity;

    /// <summary>Speed of the phase, ω/β [m/s]; above c in an air-filled guide, +∞ below cut-off.</summary>
    public double PhaseVelocity => Travels ? Frequency * GuideWavelength : double.PositiveInfinity;

    /// <summary>Speed of the energy, c²β/(ω ε_r) [m/s]; 0 below cut-off.</summary>
    public double GroupVelocity => Travels
        ? Constants.SpeedOfLight * Constants.SpeedOfLight / (RelativePermittivity * PhaseVelocity)
        : 0.0;

    /// <summary>Transverse E over transverse H of TE10, Z = jωµ0/γ [Ω]: real above cut-off, inductive below.</summary>
    /// <remarks>Source: [Pozar2012] § 3.3.</remarks>
    public Complex WaveImpedance => new Complex(0.0, 2.0 * Math.PI * Frequency * Constants.MagneticConstant) / PropagationConstant;

    private double Wavenumber => FreeSpace.Wavenumber(Frequency) * Math.Sqrt(RelativePermittivity);

    private double CutoffWavenumber => Math.PI / Guide.Width;

    /// <summary>The TE10 wave of a guide.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0; any side of the cut-off.</param>
    /// <param name="relativePermittivity">Of a lossless filling, ε_r [-]; ≥ 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static GuideWave At(RectangularGuide guide, double frequency, double relativePermittivity = 1.0)
    {
        ArgumentNullException.ThrowIfNull(guide);
        return new GuideWave(guide, Require.Positive(frequency), Require.Within(relativePermittivity, 1.0, double.MaxValue));
    }

    /// <summary>How fast the field falls along the guide, attenuation constant [Np/m]: wall loss above cut-off, dying out below.</summary>
    /// <param name="walls">What the walls are made of; smooth.</param>
    /// <returns>α [Np/m]; times 20/ln 10 = 8.686 for dB/m. Grows without limit close above cut-off, where the perturbation behind it fails.</returns>
    /// <remarks>
    /// Eq. guides (3), above cut-off: α = R_s (2bπ² + a³k²)/(a³ b β k η), η of the filling. Roughness and dirt make real guides lossier,
    /// by some tens of per cent at 10 GHz (common practice, no source). Source: [Pozar2012] § 3.3.
    /// </remarks>
    public double Attenuation(Conductor walls)
    {
        ArgumentNullException.ThrowIfNull(walls);
        if (!Travels)
        {
            return PropagationConstant.Real;
        }

        double a = Guide.Width, b = Guide.Height, k = Wavenumber;
        double eta = Constants.VacuumImpedance / Math.Sqrt(RelativePermittivity);
        return walls.SurfaceResistance(Frequency) * ((2.0 * b * Math.PI * Math.PI) + (a * a * a * k * k))
            / (a * a * a * b * PropagationConstant.Imaginary * k * eta);
    }
}
