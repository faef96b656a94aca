namespace Hornbook.Physics.Detection;

/// <summary>An instrumentation amplifier between detector and tone.</summary>
/// <param name="Gain">Voltage gain [-]; finite, &gt; 0.</param>
/// <param name="Offset">Added at the output [V]; finite.</param>
/// <param name="LowerRail">Lowest output voltage [V]; finite.</param>
/// <param name="UpperRail">Highest output voltage [V]; finite, &gt; lower rail.</param>
/// <param name="NoiseDensity">Input voltage noise [V/√Hz]; finite, ≥ 0.</param>
/// <param name="Bandwidth">Noise bandwidth [Hz]; finite, &gt; 0.</param>
public sealed record Amplifier(double Gain, double Offset, double LowerRail, double UpperRail, double NoiseDensity, double Bandwidth)
{
    /// <summary>Voltage gain [-].</summary>
    public double Gain { get; init => field = Require.Positive(value, nameof(Gain)); } = Require.Positive(Gain);

    /// <summary>Added at the output [V].</summary>
    public double Offset { get; init => field = Require.Finite(value, nameof(Offset)); } = Require.Finite(Offset);

    /// <summary>Lowest output voltage [V].</summary>
    public double LowerRail { get; } = Require.Finite(LowerRail);

    /// <summary>Highest output voltage [V].</summary>
    public double UpperRail { get; } = Require.Within(UpperRail, Math.BitIncrement(LowerRail), double.MaxValue);

    /// <summary>Input voltage noise [V/√Hz].</summary>
    public double NoiseDensity { get; init => field = Require.NotNegative(value, nameof(NoiseDensity)); } = Require.NotNegative(NoiseDensity);

    /// <summary>Noise bandwidth [Hz].</summary>
    public double Bandwidth { get; init => field = Require.Positive(value, nameof(Bandwidth)); } = Require.Positive(Bandwidth);

    /// <summary>The output as it would be without rails [V].</summary>
    public double Unlimited(double input) => Offset + (Gain * input);

    /// <summary>An output voltage held between the rails [V].</summary>
    public double Held(double output) => Math.Clamp(output, LowerRail, UpperRail);
}
