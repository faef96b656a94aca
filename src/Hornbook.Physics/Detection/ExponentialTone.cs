namespace Hornbook.Physics.Detection;

/// <summary>Exponential control: f = f0 × 2^(V × octaves per volt).</summary>
public sealed record ExponentialTone : ToneLaw
{
    /// <summary>Octaves for each volt [1/V]; finite, not 0; negative where the tone falls as the voltage rises.</summary>
    public required double OctavesPerVolt { get; init => field = NotZero(value, nameof(OctavesPerVolt)); }

    /// <inheritdoc/>
    public override double Voltage(double frequency) => Math.Log2(Require.Positive(frequency) / AtZero) / OctavesPerVolt;

    /// <inheritdoc/>
    protected override double Unlimited(double voltage) => AtZero * Math.Pow(2.0, OctavesPerVolt * voltage);
}
