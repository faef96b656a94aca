using System.Numerics;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>Two horns that face each other at a short distance, in the quadratic approximation.</summary>
public static class FacingMouths
{
    /// <summary>Power received over what Friis' formula gives with both far-field gains and the distance between the mouths [-].</summary>
    /// <param name="source">One mouth.</param>
    /// <param name="receiver">The other mouth, on the same axis, same polarisation.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="distance">Mouth to mouth, R [m]; finite, &gt; 0.</param>
    /// <returns>A ratio, usually below 1; symmetric in the two mouths. Its square root is the loss per horn of two equal horns.</returns>
    /// <remarks>
    /// Eq. horn-closed-form (6): both mouth fields under the kernel e^{−jπ(y−y')²/λR}, plane by plane. Nothing goes back and forth
    /// between the horns, and the 1/R of the amplitude is taken as constant, so below R ≈ A²/4λ it is a rough guide only.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or a phase exceeds 100 waves.</exception>
    public static double RelativePower(FlaredMouth source, FlaredMouth receiver, double wavelength, double distance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        double scale = 1.0 / Math.Sqrt(8.0 * Require.Positive(wavelength) * Require.Positive(distance));
        return Plane(source.LineE(wavelength), receiver.LineE(wavelength), source.Height * scale, receiver.Height * scale)
            * Plane(source.LineH(wavelength), receiver.LineH(wavelength), source.Width * scale, receiver.Width * scale);
    }

    // p and r are half sides over √(2λR), so that π(y−y')²/(λR) = 2π(p x − r x')².
    private static double Plane(PhasedLine a, PhasedLine b, double p, double r)
    {
        double largest = Math.Max(a.PhaseParameter, b.PhaseParameter) + ((p + r) * Math.Max(p, r));
        int order = PhasedLine.Order(4.0 * Math.PI * Require.Within(largest, 0.0, PhasedLine.LargestPhaseParameter));
        Complex coupled = GaussLegendreRule.ContourIntegrate(
            x => PhasedLine.Strength(a.Taper, x) * GaussLegendreRule.ContourIntegrate(y => Element(a, b, (p * x) - (r * y), x, y), -1.0, 1.0, order),
            -1.0,
            1.0,
            order);
        Complex still = coupled / (Whole(a.Taper) * Whole(b.Taper));
        return still.Magnitude * still.Magnitude / (a.AxialFactor * b.AxialFactor);
    }

    private static Complex Element(PhasedLine a, PhasedLine b, double across, double x, double y) =>
        Complex.FromPolarCoordinates(
            PhasedLine.Strength(b.Taper, y),
            -2.0 * Math.PI * ((a.PhaseParameter * x * x) + (b.PhaseParameter * y * y) + (across * across)));

    private static double Whole(LineTaper taper) => taper == LineTaper.Uniform ? 2.0 : 4.0 / Math.PI;
}
