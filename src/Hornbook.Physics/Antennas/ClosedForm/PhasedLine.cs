using System.Numerics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>A line of sources whose phase lags as the square of the distance from its middle: one plane of a horn's mouth.</summary>
/// <remarks>
/// Eq. horn-closed-form (1): F(ψ) = ∫f(x) e^{−j2πqx² + jψx} dx / ∫f(x) dx over −1 ≤ x ≤ 1, x the place over half the length D, f = 1 or cos(πx/2).
/// These are Fresnel integrals; they are summed by Gauss–Legendre points, which keeps all digits also where q → 0 and
/// the textbook form subtracts equal numbers.
/// </remarks>
public sealed record PhasedLine
{
    /// <summary>The largest phase parameter that is accepted: 100 waves of lag at the edge.</summary>
    public const double LargestPhaseParameter = 100.0;

    /// <summary>A line.</summary>
    /// <param name="taper">Strength along it.</param>
    /// <param name="phaseParameter">Lag at the edge in waves, q = D²/(8λρ) [-]: s in the E plane, t in the H plane; 0 … 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The phase parameter is out of range.</exception>
    public PhasedLine(LineTaper taper, double phaseParameter)
    {
        Taper = taper;
        PhaseParameter = Require.Within(phaseParameter, 0.0, LargestPhaseParameter);
    }

    /// <summary>Strength along it.</summary>
    public LineTaper Taper { get; }

    /// <summary>Lag at the edge in waves, q [-].</summary>
    public double PhaseParameter { get; }

    /// <summary>Power straight ahead over that of the line in phase, R_E or R_H [-], 0 … 1.</summary>
    /// <remarks>Eq. horn-closed-form (2). Source: [Jull1970]; [Balanis2016] ch. 13.</remarks>
    public double AxialFactor => Power(0.0);

    /// <summary>Distance of the phase centre behind the mouth over the radius of the flare, near the axis, ℓ/ρ [-].</summary>
    /// <remarks>Eq. horn-closed-form (5): ℓ/ρ = −4πq Im⟨x²⟩, which equals −q d(ln R)/dq. Source: [Muehldorf1970]; [Milligan2005].</remarks>
    public double PhaseCentreShare => -4.0 * Math.PI * PhaseParameter * (Integral(0.0, 2) / Integral(0.0, 0)).Imaginary;

    /// <summary>Half-power width: the full range of D sin θ/λ in which at least half of the axial power arrives [-]; no obliquity factor.</summary>
    /// <returns>The width, to the first crossing on each side; null where the axis itself is a dip.</returns>
    public double? HalfPowerWidth
    {
        get
        {
            const double Step = 0.05;
            double axial = AxialFactor;
            if (Power(Math.PI * 0.5 * Step) > axial)
            {
                return null;
            }

            double lower = 0.0;
            while (Power(Math.PI * (lower + Step)) > 0.5 * axial)
            {
                lower += Step;
            }

            return 2.0 * Brent.FindRoot(u => Power(Math.PI * u) - (0.5 * axial), lower, lower + Step, 1e-12, 100);
        }
    }

    /// <summary>Field in a direction over the axial field of the line in phase, F(ψ) [-].</summary>
    /// <param name="psi">ψ = πD sin θ/λ [rad]; finite.</param>
    public Complex Pattern(double psi) => Integral(Require.Finite(psi), 0) / (Taper == LineTaper.Uniform ? 2.0 : 4.0 / Math.PI);

    private double Power(double psi)
    {
        double magnitude = Pattern(psi).Magnitude;
        return magnitude * magnitude;
    }

    private Complex Integral(double psi, int power)
    {
        double q = PhaseParameter;
        return GaussLegendreRule.ContourIntegrate(
            x => Complex.FromPolarCoordinates(Strength(Taper, x) * Math.Pow(x, power), ((-2.0 * Math.PI * q * x) + psi) * x),
            -1.0,
            1.0,
            Order((4.0 * Math.PI * q) + Math.Abs(psi)));
    }

    internal static double Strength(LineTaper taper, double x) => taper == LineTaper.Uniform ? 1.0 : Math.Cos(0.5 * Math.PI * x);

    /// <summary>Enough points for full double precision where the phase changes by at most <paramref name="gradient"/> radians per unit of x.</summary>
    /// <remarks>Gauss–Legendre converges faster than any power once the points outnumber half the gradient; the orders are those that MathNet stores.</remarks>
    internal static int Order(double gradient) => gradient switch
    {
        < 20.0 => 32,
        < 70.0 => 64,
        < 170.0 => 128,
        < 400.0 => 256,
        < 850.0 => 512,
        _ => 1024,
    };
}
