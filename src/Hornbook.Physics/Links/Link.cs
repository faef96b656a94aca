using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Links;

/// <summary>From the guide of one antenna into the guide of another, in any place and pose, with every near-zone term.</summary>
public static class Link
{
    /// <summary>The wave delivered into the receiver's guide over the wave that its guide brings to the source antenna [-].</summary>
    /// <param name="source">Sending antenna.</param>
    /// <param name="sourcePose">Its pose.</param>
    /// <param name="receiver">Receiving antenna, at the same frequency.</param>
    /// <param name="receiverPose">Its pose.</param>
    /// <returns>Complex amplitude; |.|² is the link as a power ratio. Reflections between the two are not in it: see <see cref="StandingRipple"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The two mouths stand in the same place.</exception>
    /// <remarks>S21 = ¼⟨s,r⟩ for currents of one watt radiated, times the root of what reflection and walls leave (Eq. radiation (7)).</remarks>
    public static Complex Amplitude(Antenna source, Pose sourcePose, Antenna receiver, Pose receiverPose)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        Require.Positive((receiverPose.Position - sourcePose.Position).Length, "distance");
        double kept = Mismatch(source, receiver) * Ohmic(source, receiver);
        return 0.25 * Math.Sqrt(kept) * Reaction.Between(source.Currents, sourcePose, receiver.Currents, receiverPose, source.Wavenumber);
    }

    /// <summary>The link by the textbook's formula for far antennas face to face, G_s G_r (λ/4πr)² [-].</summary>
    /// <param name="source">Sending antenna.</param>
    /// <param name="receiver">Receiving antenna, at the same frequency.</param>
    /// <param name="distance">From mouth to mouth, r [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is out of its range.</exception>
    /// <remarks>With the gains on the axes and both reflections; it knows nothing of turns and near zones. [Friis1946].</remarks>
    public static double Friis(Antenna source, Antenna receiver, double distance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        double spread = source.Wavelength / (4.0 * Math.PI * Require.Positive(distance));
        return source.RealisedGain * receiver.RealisedGain * spread * spread;
    }

    /// <summary>What both antennas' own reflections leave, (1−|Γ_s|²)(1−|Γ_r|²) [-].</summary>
    public static double Mismatch(Antenna source, Antenna receiver)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return source.MismatchEfficiency * receiver.MismatchEfficiency;
    }

    /// <summary>What both antennas' walls leave [-].</summary>
    public static double Ohmic(Antenna source, Antenna receiver)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return source.OhmicEfficiency * receiver.OhmicEfficiency;
    }
}
