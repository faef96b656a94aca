namespace Hornbook.Physics.Detection;

/// <summary>From the power in the guide to the voltage of the unloaded or loaded detector.</summary>
public interface IDetectorLaw
{
    /// <summary>Resistance that the amplifier sees, for thermal noise, R_v [Ω]; &gt; 0.</summary>
    double VideoResistance { get; }

    /// <summary>Absolute temperature of that resistance [K].</summary>
    double Temperature { get; }

    /// <summary>Powers for which the law is backed by its parameters or calibration, lowest and highest [W].</summary>
    (double Lowest, double Highest) TrustedPower { get; }

    /// <summary>Detector voltage [V] for a power in the guide [W]; ≥ 0, rises with power.</summary>
    double Voltage(double power);

    /// <summary>The power in the guide [W] that gives a detector voltage [V]: the inverse of <see cref="Voltage"/>.</summary>
    double Power(double voltage);
}
