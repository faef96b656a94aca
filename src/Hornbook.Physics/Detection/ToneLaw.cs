namespace Hornbook.Physics.Detection;

/// <summary>From the amplifier's voltage to the pitch of the tone.</summary>
public abstract record ToneLaw
{
    /// <summary>Frequency of the tone at zero volts [Hz]; finite, &gt; 0.</summary>
    public required double AtZero { get; init => field = Require.Positive(value, nameof(AtZero)); }

    /// <summary>Lowest frequency that the converter gives [Hz]; finite, &gt; 0.</summary>
    public required double Lowest { get; init => field = Require.Positive(value, nameof(Lowest)); }

    /// <summary>Highest frequency that the converter gives [Hz]; finite, &gt; the lowest (a <see cref="DetectionChain"/> refuses others).</summary>
    public required double Highest { get; init => field = Require.Positive(value, nameof(Highest)); }

    /// <summary>The tone [Hz] for an amplifier voltage [V], held between lowest and highest.</summary>
    public double Frequency(double voltage) => Math.Clamp(Unlimited(voltage), Lowest, Highest);

    /// <summary>Whether the converter would have to leave its range for an amplifier voltage [V].</summary>
    public bool IsLimited(double voltage) => Unlimited(voltage) is double f && (f < Lowest || f > Highest);

    /// <summary>The amplifier voltage [V] that gives a tone [Hz], without the limits.</summary>
    public abstract double Voltage(double frequency);

    /// <summary>The law without its limits.</summary>
    protected abstract double Unlimited(double voltage);

    private protected static double NotZero(double value, string name) => Require.Finite(value, name) != 0.0
        ? value
        : throw new ArgumentOutOfRangeException(name, value, $"{name} = 0; must be finite and not 0");
}
