namespace Hornbook.Physics.Detection;

/// <summary>Detector, amplifier and tone in a row.</summary>
/// <param name="Detector">Power in the guide to volts.</param>
/// <param name="Amplifier">Volts to more volts.</param>
/// <param name="Tone">Volts to hertz.</param>
/// <exception cref="ArgumentException">The highest tone is not above the lowest.</exception>
public sealed record DetectionChain(IDetectorLaw Detector, Amplifier Amplifier, ToneLaw Tone)
{
    /// <summary>Volts to hertz.</summary>
    public ToneLaw Tone { get; init => field = InOrder(value); } = InOrder(Tone);

    /// <summary>Rms noise at the amplifier's output [V]: thermal noise of the video resistance and the amplifier's own.</summary>
    /// <remarks>Eq. detection (5): gain × √[(4 k T R_v + e_n²) B]; thermal part [Nyquist1928].</remarks>
    public double Noise
    {
        get
        {
            double thermal = WeakSignal.ThermalNoise(Detector.VideoResistance, Detector.Temperature, Amplifier.Bandwidth);
            double own = Amplifier.NoiseDensity * Math.Sqrt(Amplifier.Bandwidth);
            return Amplifier.Gain * Math.Sqrt((thermal * thermal) + (own * own));
        }
    }

    /// <summary>The weakest power whose signal equals the rms noise [W].</summary>
    public double WeakestPower => Detector.Power(Noise / Amplifier.Gain);

    /// <summary>What the chain makes of a power in the receiver's guide [W]; ≥ 0.</summary>
    /// <remarks>Drowned: signal over rms noise at the amplifier's output below one. Allocates nothing: it is called at each move of a pointer.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public HeardTone Hear(double power)
    {
        double detected = Detector.Voltage(power);
        double unlimited = Amplifier.Unlimited(detected);
        double output = Amplifier.Held(unlimited);
        double noise = Noise;
        bool clipped = output != unlimited || Tone.IsLimited(output);
        ToneState state = Amplifier.Gain * detected < noise ? ToneState.Drowned : clipped ? ToneState.Clipped : ToneState.Clear;
        return new HeardTone(detected, output, noise, Tone.Frequency(output), clipped ? 0.0 : JitterCents(output, noise), state);
    }

    // Half the way from one standard deviation below to one above, through rails and limits: the slope of the law where the
    // noise is small, and never more than the converter can wander where it is large.
    private double JitterCents(double output, double noise)
    {
        double above = Tone.Frequency(Amplifier.Held(output + noise));
        double below = Tone.Frequency(Amplifier.Held(output - noise));
        return 600.0 * Math.Abs(Math.Log2(above / below));
    }

    private static ToneLaw InOrder(ToneLaw tone)
    {
        ArgumentNullException.ThrowIfNull(tone);
        return tone.Highest > tone.Lowest
            ? tone
            : throw new ArgumentException(FormattableString.Invariant($"highest tone = {tone.Highest} Hz; must be above the lowest, {tone.Lowest} Hz"));
    }
}
