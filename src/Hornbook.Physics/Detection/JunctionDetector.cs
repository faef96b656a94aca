namespace Hornbook.Physics.Detection;

/// <summary>An ideal exponential junction without load, of a measured sensitivity: square at low power, linear at high.</summary>
/// <param name="Sensitivity">To weak waves, γ [V/W]; finite, &gt; 0.</param>
/// <param name="VideoResistance">R_v [Ω]; finite, &gt; 0.</param>
/// <remarks>Eq. detection (4): V = V_t ln I0(2 √(γP/V_t)), V_t = n k T/q, whose slope at no power is γ.</remarks>
public sealed record JunctionDetector(double Sensitivity, double VideoResistance) : MeasuredSensitivity(Sensitivity, VideoResistance)
{
    /// <summary>Ideality factor n [-]; from 1 to 3, 1 unless given.</summary>
    public double Ideality { get; init => field = Require.Within(value, 1.0, 3.0, nameof(Ideality)); } = 1.0;

    /// <summary>From 0 to a drive of ten (0.2 V), beyond which load and breakdown count [W]; common practice, no source.</summary>
    public override (double Lowest, double Highest) TrustedPower => (0.0, 25.0 * ScaleVoltage / Sensitivity);

    private double ScaleVoltage => Ideality * ThermalVoltage;

    /// <inheritdoc/>
    public override double Voltage(double power) =>
        ScaleVoltage * LogBesselI0.Of(2.0 * Math.Sqrt(Sensitivity * Require.NotNegative(power) / ScaleVoltage));

    /// <inheritdoc/>
    public override double Power(double voltage)
    {
        double drive = LogBesselI0.Inverse(Require.Finite(voltage) / ScaleVoltage);
        return 0.25 * drive * drive * ScaleVoltage / Sensitivity;
    }
}
