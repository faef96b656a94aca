using System.Globalization;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Links;

namespace Hornbook.Bench.Readings;

/// <summary>How far a link can be believed, from what a full-wave comparison of short benches found.</summary>
internal static class LinkTrust
{
    // Within 20° of both axes the mouth model is good to about half a decibel; beyond 60° the outside of the walls decides.
    private const double GoodAngle = Math.PI / 9.0;

    // Twenty decibels below the link that the two antennas would have face to face, the level is good to a few decibels only.
    private const double WeakLink = 0.01;

    // A way that brings less than a third of the strongest one's amplitude does not decide where the wave goes.
    private const double ShareThatCounts = 0.3;

    // What the panels still move after the last sweep; more than this is more than the rest of the uncertainty.
    private const double LargeUnsettledDb = 0.5;

    internal static Trust Of(LinkParts parts)
    {
        if (parts.Distance < parts.Source.Wavelength)
        {
            return new Trust(TrustLevel.Outside, "The mouths are closer than a wavelength; what goes to and fro between them is left out.");
        }

        if (parts.Solution is { IsSettled: false } unsettled)
        {
            return new Trust(unsettled.UnsettledDb > LargeUnsettledDb ? TrustLevel.Outside : TrustLevel.Rough, string.Create(CultureInfo.InvariantCulture,
                $"The panels throw the wave to and fro and it does not settle: after {unsettled.Sweeps} sweeps the link may still move by {unsettled.UnsettledDb:F2} dB."));
        }

        double offSource = AngleOff(parts.SourcePose, parts.Ways, way => way.FromSource);
        double offReceiver = AngleOff(parts.ReceiverPose, parts.Ways, way => way.FromReceiver);
        double worst = Math.Max(offSource, offReceiver);
        bool straight = parts.Ways.Count == 1;
        if (worst > FarPattern.TrustedAngle)
        {
            return new Trust(TrustLevel.Outside, Sentence(straight, offSource, offReceiver, "beyond 60° the outside of the walls decides, which is left out"));
        }

        if (parts.Link < WeakLink * Link.Friis(parts.Source, parts.Receiver, parts.Distance))
        {
            return new Trust(TrustLevel.Rough, "The signal is over 20 dB below that of antennas face to face: good to a few decibels only.");
        }

        return worst > GoodAngle
            ? new Trust(TrustLevel.Rough, Sentence(straight, offSource, offReceiver, "beyond 20° the prediction is good to a decibel or two"))
            : new Trust(TrustLevel.Good, "Close to both axes: good to about half a decibel.");
    }

    /// <summary>The largest angle off an axis at which a way that counts leaves or arrives [rad].</summary>
    private static double AngleOff(Pose pose, IReadOnlyList<LinkWay> ways, Func<LinkWay, Vector> towards)
    {
        double strongest = ways.Max(way => way.Wave.Magnitude);
        return ways.Where(way => way.Wave.Magnitude >= ShareThatCounts * strongest).Max(way => AngleOff(pose, towards(way) - pose.Position));
    }

    private static double AngleOff(Pose pose, Vector towards) =>
        Math.Acos(Math.Clamp(Vector.Dot(pose.Forward, towards) / towards.Length, -1.0, 1.0));

    private static string Sentence(bool straight, double offSource, double offReceiver, string consequence)
    {
        (double angle, string ends) = (straight, offSource >= offReceiver) switch
        {
            (true, true) => (offSource, "The receiver stands {0}° off the source's axis"),
            (true, false) => (offReceiver, "The source stands {0}° off the receiver's axis"),
            (false, true) => (offSource, "A wave that counts leaves {0}° off the source's axis"),
            (false, false) => (offReceiver, "A wave that counts arrives {0}° off the receiver's axis"),
        };
        string degrees = (angle * 180.0 / Math.PI).ToString("F0", CultureInfo.InvariantCulture);
        return string.Format(CultureInfo.InvariantCulture, ends, degrees) + ": " + consequence + ".";
    }
}
