namespace Hornbook.Physics.Detection;

/// <summary>V = γP at every power.</summary>
/// <param name="Sensitivity">γ [V/W]; finite, &gt; 0.</param>
/// <param name="VideoResistance">R_v [Ω]; finite, &gt; 0.</param>
public sealed record SquareDetector(double Sensitivity, double VideoResistance) : MeasuredSensitivity(Sensitivity, VideoResistance)
{
    /// <summary>From 0 to where an ideal junction of this sensitivity has left the square by half a decibel, γP = 1.5²/4 × kT/q (14 mV) [W].</summary>
    public override (double Lowest, double Highest) TrustedPower => (0.0, 0.5625 * ThermalVoltage / Sensitivity);

    /// <inheritdoc/>
    public override double Voltage(double power) => Sensitivity * Require.NotNegative(power);

    /// <inheritdoc/>
    public override double Power(double voltage) => Math.Max(0.0, Require.Finite(voltage)) / Sensitivity;
}
