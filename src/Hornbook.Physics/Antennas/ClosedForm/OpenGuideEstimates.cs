using System.Numerics;
using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>What is known of an open guide without computing it: two gains that bracket the truth, and patterns of the forward half space.</summary>
public static class OpenGuideEstimates
{
    /// <summary>Gain of TE10 in phase over the mouth with a plane wave's impedance, 32ab/(πλ²) [-]; 1 to 2 dB too low.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <remarks>Source: [Balanis2016] ch. 12.</remarks>
    public static double InPhaseGain(RectangularGuide guide, double frequency)
    {
        ArgumentNullException.ThrowIfNull(guide);
        double wavelength = FreeSpace.Wavelength(frequency);
        return 32.0 * guide.Width * guide.Height / (Math.PI * wavelength * wavelength);
    }

    /// <summary>Gain fitted to measured guides that are twice as wide as high, 21.6 f a with f in GHz and a in metres [-].</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0, in the recommended band.</param>
    /// <returns>Within about 0.7 dB of a real guide.</returns>
    /// <remarks>Source: [KandaOrr1987].</remarks>
    public static double FittedGain(RectangularGuide guide, double frequency)
    {
        ArgumentNullException.ThrowIfNull(guide);
        return 21.6e-9 * Require.Positive(frequency) * guide.Width;
    }

    /// <summary>Field in the E plane over that on the axis [-].</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; above cut-off.</param>
    /// <param name="angle">From the axis, θ [rad]; the forward half, −π/2 … π/2.</param>
    /// <param name="reflection">Of the mouth, Γ [-].</param>
    /// <remarks>
    /// Eq. horn-closed-form (8): [1 + (β/k)cos θ + Γ(1 − (β/k)cos θ)] / [1 + β/k + Γ(1 − β/k)] × sin Y/Y, Y = (kb/2) sin θ.
    /// Source: [Yaghjian1984]; good to about 2 dB over the forward half.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not above cut-off, or the angle is not in the forward half.</exception>
    public static Complex PatternE(RectangularGuide guide, double frequency, double angle, Complex reflection)
    {
        double ratio = RelativePhaseConstant(guide, frequency);
        double cosine = Math.Cos(Require.Within(angle, -0.5 * Math.PI, 0.5 * Math.PI));
        double y = 0.5 * FreeSpace.Wavenumber(frequency) * guide.Height * Math.Sin(angle);
        return (1.0 + (ratio * cosine) + (reflection * (1.0 - (ratio * cosine))))
            / (1.0 + ratio + (reflection * (1.0 - ratio))) * Sinc(y);
    }

    /// <summary>Field in the H plane over that on the axis [-]; the electric field of the mouth alone.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="frequency">f [Hz]; above cut-off.</param>
    /// <param name="angle">From the axis, θ [rad]; the forward half, −π/2 … π/2.</param>
    /// <remarks>Eq. horn-closed-form (9): cos θ cos X/(1 − (2X/π)²), X = (ka/2) sin θ. Source: [Yaghjian1984], first method.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not above cut-off, or the angle is not in the forward half.</exception>
    public static double PatternH(RectangularGuide guide, double frequency, double angle)
    {
        RelativePhaseConstant(guide, frequency);
        double x = 0.5 * FreeSpace.Wavenumber(frequency) * guide.Width * Math.Sin(Require.Within(angle, -0.5 * Math.PI, 0.5 * Math.PI));
        return Math.Cos(angle) * CosineLine(x);
    }

    // cos X/(1 − (2X/π)²) with d = π/2 − |X|, which has no 0/0 where numerator and denominator vanish together.
    private static double CosineLine(double x)
    {
        double d = (0.5 * Math.PI) - Math.Abs(x);
        return 0.25 * Math.PI * Sinc(d) / (1.0 - (d / Math.PI));
    }

    private static double Sinc(double x) => x == 0.0 ? 1.0 : Math.Sin(x) / x;

    private static double RelativePhaseConstant(RectangularGuide guide, double frequency)
    {
        ArgumentNullException.ThrowIfNull(guide);
        return guide.RelativePhaseConstant(guide.Carried(frequency));
    }
}
