namespace Hornbook.Physics.Detection;

/// <summary>Linear control: f = f0 + slope × V.</summary>
public sealed record LinearTone : ToneLaw
{
    /// <summary>Slope [Hz/V]; finite, not 0; negative where the tone falls as the voltage rises.</summary>
    public required double Slope { get; init => field = NotZero(value, nameof(Slope)); }

    /// <inheritdoc/>
    public override double Voltage(double frequency) => (Require.Positive(frequency) - AtZero) / Slope;

    /// <inheritdoc/>
    protected override double Unlimited(double voltage) => AtZero + (Slope * voltage);
}
