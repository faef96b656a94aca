namespace Hornbook.Physics.Detection;

/// <summary>From the amplifier's voltage to the pitch of the tone.</summary>
public abstract record ToneLaw
{
    /// <summary>Frequency of the tone at zero volts [Hz].</summary>
    public required double AtZero { get; init; }

    /// <summary>Lowest frequency that the converter gives [Hz].</summary>
    public required double Lowest { get; init; }

    /// <summary>Highest frequency that the converter gives [Hz].</summary>
    public required double Highest { get; init; }

    /// <summary>The tone [Hz] for an amplifier voltage [V], held between lowest and highest.</summary>
    public double Frequency(double voltage) => Math.Clamp(Unlimited(voltage), Lowest, Highest);

    /// <summary>The law without its limits.</summary>
    protected abstract double Unlimited(double voltage);
}

/// <summary>Linear control: f = f0 + slope × V.</summary>
public sealed record LinearTone : ToneLaw
{
    /// <summary>Slope [Hz/V].</summary>
    public required double Slope { get; init; }

    /// <inheritdoc/>
    protected override double Unlimited(double voltage) => AtZero + (Slope * voltage);
}

/// <summary>Exponential control: f = f0 × 2^(V × octaves per volt).</summary>
public sealed record ExponentialTone : ToneLaw
{
    /// <summary>Octaves for each volt [1/V].</summary>
    public required double OctavesPerVolt { get; init; }

    /// <inheritdoc/>
    protected override double Unlimited(double voltage) => AtZero * Math.Pow(2.0, OctavesPerVolt * voltage);
}
