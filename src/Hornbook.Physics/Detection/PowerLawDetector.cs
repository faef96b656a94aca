namespace Hornbook.Physics.Detection;

/// <summary>A detector whose voltage goes as a power of the power: V = γ P0 (P/P0)^m.</summary>
/// <param name="Sensitivity">V/P at the reference power, γ [V/W]; finite, &gt; 0.</param>
/// <param name="VideoResistance">R_v [Ω]; finite, &gt; 0.</param>
/// <param name="Exponent">m [-]; from 0.1 to 2: 1 is a square detector, ½ a linear one.</param>
/// <param name="ReferencePower">Where γ was measured, P0 [W]; finite, &gt; 0.</param>
public sealed record PowerLawDetector(double Sensitivity, double VideoResistance, double Exponent, double ReferencePower)
    : MeasuredSensitivity(Sensitivity, VideoResistance)
{
    /// <summary>m [-].</summary>
    public double Exponent { get; } = Require.Within(Exponent, 0.1, 2.0);

    /// <summary>Where γ was measured, P0 [W].</summary>
    public double ReferencePower { get; } = Require.Positive(ReferencePower);

    /// <summary>A factor of ten to either side of the reference [W]; common practice, no source.</summary>
    public override (double Lowest, double Highest) TrustedPower => (0.1 * ReferencePower, 10.0 * ReferencePower);

    /// <inheritdoc/>
    public override double Voltage(double power) =>
        Sensitivity * ReferencePower * Math.Pow(Require.NotNegative(power) / ReferencePower, Exponent);

    /// <inheritdoc/>
    public override double Power(double voltage) =>
        ReferencePower * Math.Pow(Math.Max(0.0, Require.Finite(voltage)) / (Sensitivity * ReferencePower), 1.0 / Exponent);
}
