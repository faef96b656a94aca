using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Detection;

/// <summary>A diode across a matched line, with a direct-current load: square at low power, linear at high.</summary>
/// <remarks>
/// Eq. detection (1), [HarrisonLePolozec1994]: with Λ = q/kT,
/// I0((Λ/n) √(8 R_g P)) = [1 + V/(R_L I_s)] exp{[1 + (R_g+R_s)/R_L] ΛV/n + Λ R_s I_s/n}.
/// It is solved for V in its logarithm, which neither overflows nor loses a small signal. The whole wave is taken to lie across the
/// junction, so that R_g + R_s must be small beside it: <see cref="TrustedPower"/> says from where on it is small enough.
/// </remarks>
public sealed record DiodeDetector : IDetectorLaw
{
    /// <summary>What may be wrong where the law is trusted [dB].</summary>
    private const double Tolerance = 0.5;

    /// <summary>A diode in its mount at a frequency.</summary>
    /// <param name="diode">The diode.</param>
    /// <param name="frequency">Of the wave [Hz]; ≥ 0, where 0 leaves the junction's capacitance out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not finite or negative.</exception>
    public DiodeDetector(Diode diode, double frequency)
    {
        ArgumentNullException.ThrowIfNull(diode);
        Diode = diode;
        Frequency = Require.NotNegative(frequency);
    }

    /// <summary>The diode.</summary>
    public Diode Diode { get; }

    /// <summary>Frequency of the wave [Hz]; 0 leaves the junction's capacitance out.</summary>
    public double Frequency { get; }

    /// <summary>Which closed form is solved.</summary>
    public DiodeLaw Law { get; init; } = DiodeLaw.HarrisonLePolozec;

    /// <summary>Resistance from which the mount drives the diode, R_g [Ω]; &gt; 0, 50 Ω unless given.</summary>
    public double SourceResistance { get; init => field = Require.Positive(value, nameof(SourceResistance)); } = 50.0;

    /// <summary>Resistance that loads the direct voltage, R_L [Ω]; &gt; 0, 1 MΩ unless given.</summary>
    public double LoadResistance { get; init => field = Require.Positive(value, nameof(LoadResistance)); } = 1e6;

    /// <summary>Share of the power in the guide that the mount brings to the diode's terminals [-]; over 0 to 1, 1 unless given.</summary>
    public double MountEfficiency { get; init => field = Require.Within(value, 1e-12, 1.0, nameof(MountEfficiency)); } = 1.0;

    /// <inheritdoc/>
    public double Temperature { get; init => field = Require.Positive(value, nameof(Temperature)); } = 293.15;

    /// <summary>The junction and R_s at no bias in parallel with the load [Ω].</summary>
    public double VideoResistance
    {
        get
        {
            double diode = Diode.JunctionResistance(Temperature) + Diode.SeriesResistance;
            return diode * LoadResistance / (diode + LoadResistance);
        }
    }

    /// <summary>Share of the squared voltage that the capacitance leaves to the junction, 1/[1 + (ω C_j (R_g+R_s))²] [-].</summary>
    /// <remarks>Eq. detection (3): the divider of R_g + R_s and C_j. C_j at no bias: the self-bias of a strong wave makes it smaller.</remarks>
    public double CapacitanceFactor
    {
        get
        {
            double ratio = 2.0 * Math.PI * Frequency * Diode.JunctionCapacitance * (SourceResistance + Diode.SeriesResistance);
            return 1.0 / (1.0 + (ratio * ratio));
        }
    }

    /// <summary>
    /// From where R_g + R_s in series and the constant term of the published form each cost less than about half a decibel (0 where they
    /// never cost more) to where the junction breaks down in reverse, V = B_v/2 [W].
    /// </summary>
    public (double Lowest, double Highest) TrustedPower => (
        PowerOfDrive(Math.Max(2.0 * Math.Sqrt(ConstantTerm / (1.0 - Decibels.ToRatio(-Tolerance))), DriveOfSmallSeries)),
        double.IsFinite(Diode.BreakdownVoltage) ? Power(0.5 * Diode.BreakdownVoltage) : double.PositiveInfinity);

    // Eq. detection (8): from which drive on the wave's part across R_g + R_s, ρ 2 I1(x)/(x I0(x)) of that across the junction, is small.
    private double DriveOfSmallSeries
    {
        get
        {
            double series = (SourceResistance + Diode.SeriesResistance) / Diode.JunctionResistance(Temperature);
            double allowed = Math.Sqrt(Decibels.ToRatio(Tolerance)) - 1.0;
            return series <= allowed
                ? 0.0
                : (1.0 + allowed) * Brent.FindRoot(x => (2.0 * series * LogBesselI0.Slope(x) / x) - allowed, 1e-6, 2.0 * series / allowed, 1e-9, 200);
        }
    }

    // ΛR_sI_s/n: what the published form has beside the balance of currents.
    private double ConstantTerm => Law == DiodeLaw.CurrentBalance ? 0.0 : Diode.SeriesResistance * Diode.SaturationCurrent / ScaleVoltage;

    private double ScaleVoltage => Diode.ScaleVoltage(Temperature);

    private double CurrentScale => LoadResistance * Diode.SaturationCurrent;

    private double VoltageSlope => (1.0 + ((SourceResistance + Diode.SeriesResistance) / LoadResistance)) / ScaleVoltage;

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public double Voltage(double power)
    {
        double drive = Math.Sqrt(8.0 * SourceResistance * MountEfficiency * CapacitanceFactor * Require.NotNegative(power)) / ScaleVoltage;
        return Solve(LogBesselI0.Of(drive) - ConstantTerm);
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not finite.</exception>
    public double Power(double voltage) => Require.Finite(voltage) <= 0.0
        ? 0.0
        : PowerOfDrive(LogBesselI0.Inverse(SpecialFunctions.Log1p(voltage / CurrentScale) + (VoltageSlope * voltage) + ConstantTerm));

    private double PowerOfDrive(double drive)
    {
        double peak = drive * ScaleVoltage;
        return peak * peak / (8.0 * SourceResistance * MountEfficiency * CapacitanceFactor);
    }

    // ln(1 + V/V_i) + sV = y. The left side rises and is concave, so that Newton's steps from V = 0 rise to the root and never pass it.
    private double Solve(double y)
    {
        if (y <= 0.0)
        {
            return 0.0;
        }

        double scale = CurrentScale, slope = VoltageSlope, voltage = 0.0;
        for (int step = 0; step < 60; step++)
        {
            double missing = y - SpecialFunctions.Log1p(voltage / scale) - (slope * voltage);
            double rise = missing / ((1.0 / (scale + voltage)) + slope);
            voltage += rise;
            if (rise <= 1e-15 * voltage)
            {
                break;
            }
        }

        return voltage;
    }
}
