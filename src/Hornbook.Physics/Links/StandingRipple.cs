using Hornbook.Physics.Antennas;

namespace Hornbook.Physics.Links;

/// <summary>The standing wave between two antennas, which the single passage of <see cref="Link"/> leaves out.</summary>
public static class StandingRipple
{
    // Share of the amplitude that a mouth throws back. A full-wave computation of facing horns 0.1 to 0.5 m apart found a ripple of
    // 0.2 to 0.4 dB standard deviation; 0.2 puts this estimate there.
    private const double MouthReflection = 0.2;

    // What flanges, stands and rims add, whatever the distance (common practice, no source).
    private const double Floor = 0.01;

    /// <summary>Amplitude of the wave that has gone to and fro once more, over the direct one [-].</summary>
    /// <param name="source">Sending antenna.</param>
    /// <param name="receiver">Receiving antenna.</param>
    /// <param name="distance">From mouth to mouth [m]; &gt; 0.</param>
    /// <remarks>Each mouth of area A scatters like a patch, whose wave falls to A/λR once that is below one (Eq. antennas (8)).</remarks>
    public static double Amplitude(Antenna source, Antenna receiver, double distance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return Floor + (MouthReflection * MouthReflection * Spread(source, distance) * Spread(receiver, distance));
    }

    /// <summary>Half width of the band that the ripple makes about the link [dB].</summary>
    /// <inheritdoc cref="Amplitude"/>
    public static double HalfWidthDb(Antenna source, Antenna receiver, double distance) =>
        2.0 * Decibels.FromRatio(1.0 + Amplitude(source, receiver, distance));

    /// <summary>Half width of the band with panels on the bench [dB].</summary>
    /// <param name="source">Sending antenna.</param>
    /// <param name="receiver">Receiving antenna.</param>
    /// <param name="distance">From mouth to mouth [m]; &gt; 0.</param>
    /// <param name="sourceEcho">Amplitude that the panels throw back into the source, |.| [-]; ≥ 0.</param>
    /// <param name="receiverEcho">The same at the receiver [-]; ≥ 0.</param>
    /// <remarks>
    /// What a panel throws back is thrown forward again by the mouth. A full-wave computation found 0.4 to 0.9 dB standard deviation with a plate near
    /// a mouth, which the same share as between mouths gives.
    /// </remarks>
    public static double HalfWidthDb(Antenna source, Antenna receiver, double distance, double sourceEcho, double receiverEcho)
    {
        double echoes = Require.NotNegative(sourceEcho) + Require.NotNegative(receiverEcho);
        return 2.0 * Decibels.FromRatio(1.0 + Amplitude(source, receiver, distance) + (MouthReflection * echoes));
    }

    private static double Spread(Antenna antenna, double distance)
    {
        double area = antenna.Shape.MouthWidth * antenna.Shape.MouthHeight;
        return Math.Min(1.0, area / (antenna.Wavelength * Require.Positive(distance)));
    }
}
