using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Detection;

/// <summary>How many just-noticeable steps of pitch lie between two tones.</summary>
/// <remarks>
/// The difference limen for pure tones at a moderate level (40 dB above threshold), log10 DLF = 0.026 √f − 0.533
/// [WierJesteadtGreen1977], fitted from 200 Hz to 8 kHz; people differ by a factor of two. Integrated in closed form, Eq. detection (7).
/// </remarks>
public static class PitchSteps
{
    private const double Rate = 0.026;
    private const double Level = -0.533;
    private const double HighestFrequency = 20e3;

    /// <summary>The smallest change of frequency that is heard at a frequency [Hz]; from 0 to 20 kHz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the range of hearing.</exception>
    public static double DifferenceLimen(double frequency) =>
        Math.Pow(10.0, (Rate * Math.Sqrt(Require.Within(frequency, 0.0, HighestFrequency))) + Level);

    /// <summary>Just-noticeable steps between two frequencies, in either order [-]: ∫ df/DLF(f).</summary>
    /// <param name="one">A frequency [Hz]; from 0 to 20 kHz.</param>
    /// <param name="other">Another [Hz]; from 0 to 20 kHz.</param>
    /// <exception cref="ArgumentOutOfRangeException">A frequency is outside the range of hearing.</exception>
    public static double Between(double one, double other) => Math.Abs(
        FromZero(Require.Within(other, 0.0, HighestFrequency)) - FromZero(Require.Within(one, 0.0, HighestFrequency)));

    /// <summary>The frequency so many just-noticeable steps above another [Hz].</summary>
    /// <param name="frequency">Where it begins [Hz]; from 0 to 20 kHz.</param>
    /// <param name="steps">How many; negative goes down.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency, or the end, is outside the range of hearing.</exception>
    public static double Up(double frequency, double steps)
    {
        double end = FromZero(Require.Within(frequency, 0.0, HighestFrequency)) + steps;
        Require.Within(end, 0.0, FromZero(HighestFrequency), nameof(steps));
        return Brent.FindRoot(f => FromZero(f) - end, 0.0, HighestFrequency, 1e-9, 200);
    }

    // With s = √f and b = 0.026 ln 10: 2 × 10^0.533 ∫ s e^{−bs} ds = (2 × 10^0.533/b²) [1 − (1 + bs) e^{−bs}].
    private static double FromZero(double frequency)
    {
        double b = Rate * Math.Log(10.0);
        double bs = b * Math.Sqrt(frequency);
        return 2.0 * Math.Pow(10.0, -Level) / (b * b) * (1.0 - ((1.0 + bs) * Math.Exp(-bs)));
    }
}
