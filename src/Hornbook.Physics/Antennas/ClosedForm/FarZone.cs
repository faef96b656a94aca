using System.Numerics;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>From where on an antenna may be taken as far away, and what it costs to be nearer.</summary>
/// <remarks>The losses are those of mouths in phase. A horn has its own lag, to which the near one adds: it loses several times more at 2D²/λ.</remarks>
public static class FarZone
{
    /// <summary>The usual beginning of the far zone, 2D²/λ [m], where the edge of the mouth lags by π/8.</summary>
    /// <param name="size">Largest dimension of the mouth, D [m]; finite, &gt; 0.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <remarks>Source: [IeeeStd149].</remarks>
    public static double Begins(double size, double wavelength) => 2.0 * Require.Positive(size) * size / Require.Positive(wavelength);

    /// <summary>Where the reactive near zone ends, 0.62 √(D³/λ) [m].</summary>
    /// <param name="size">Largest dimension of the mouth, D [m]; finite, &gt; 0.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <remarks>Source: [Balanis2016] ch. 2.</remarks>
    public static double ReactiveZoneEnds(double size, double wavelength) =>
        0.62 * Math.Sqrt(Math.Pow(Require.Positive(size), 3.0) / Require.Positive(wavelength));

    /// <summary>Lag of the mouth's edge against its middle as seen from a point on the axis, πD²/(4λR) [rad].</summary>
    /// <param name="size">Largest dimension of the mouth, D [m]; finite, &gt; 0.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="distance">R [m]; finite, &gt; 0.</param>
    public static double EdgePhase(double size, double wavelength, double distance) =>
        0.25 * Math.PI * Require.Positive(size) * size / (Require.Positive(wavelength) * Require.Positive(distance));

    /// <summary>Power at a point on the axis over the far-field law, of a line in phase [-]; a rectangle's is the product of its two lines'.</summary>
    /// <param name="taper">Strength along the line.</param>
    /// <param name="edgePhase">Lag at its ends, as <see cref="EdgePhase"/> gives it [rad]; 0 … 200π.</param>
    public static double LineFactor(LineTaper taper, double edgePhase) => new PhasedLine(taper, edgePhase / (2.0 * Math.PI)).AxialFactor;

    /// <summary>Power at a point on the axis over the far-field law, of a disc in phase whose field goes as (1 − r²)^p [-].</summary>
    /// <param name="taperPower">p [-]; 0 for a uniform disc, 0 … 10.</param>
    /// <param name="edgePhase">Lag at its rim, as <see cref="EdgePhase"/> gives it [rad]; 0 … 200π.</param>
    /// <remarks>Eq. horn-closed-form (7); for p = 0 it is (sin(φ/2)/(φ/2))².</remarks>
    public static double DiscFactor(int taperPower, double edgePhase)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(taperPower);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(taperPower, 10);
        Require.Within(edgePhase, 0.0, 200.0 * Math.PI);
        Complex sum = (taperPower + 1) * GaussLegendreRule.ContourIntegrate(
            u => Complex.FromPolarCoordinates(Math.Pow(1.0 - u, taperPower), -edgePhase * u), 0.0, 1.0, PhasedLine.Order(edgePhase));
        return sum.Magnitude * sum.Magnitude;
    }
}
