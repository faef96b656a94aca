namespace Hornbook.Physics.Detection;

/// <summary>A detector known by its sensitivity to weak waves and by what becomes of it at stronger ones.</summary>
/// <param name="Sensitivity">Volts for each watt in the guide, γ [V/W]; finite, &gt; 0.</param>
/// <param name="VideoResistance">R_v [Ω]; finite, &gt; 0.</param>
public abstract record MeasuredSensitivity(double Sensitivity, double VideoResistance) : IDetectorLaw
{
    /// <summary>Volts for each watt in the guide, γ [V/W].</summary>
    public double Sensitivity { get; } = Require.Positive(Sensitivity);

    /// <inheritdoc/>
    public double VideoResistance { get; } = Require.Positive(VideoResistance);

    /// <inheritdoc/>
    public double Temperature { get; init => field = Require.Positive(value, nameof(Temperature)); } = 293.15;

    /// <inheritdoc/>
    public abstract (double Lowest, double Highest) TrustedPower { get; }

    // n k T/q of a junction with n = 1 [V].
    private protected double ThermalVoltage => Constants.Boltzmann * Temperature / Constants.ElementaryCharge;

    /// <inheritdoc/>
    public abstract double Voltage(double power);

    /// <inheritdoc/>
    public abstract double Power(double voltage);
}
