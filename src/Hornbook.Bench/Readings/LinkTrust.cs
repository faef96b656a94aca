using System.Globalization;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Readings;

/// <summary>How far a link between two mouths can be believed, from what a full-wave comparison of short benches found.</summary>
internal static class LinkTrust
{
    // Within 20° of both axes the mouth model is good to about half a decibel; beyond 60° the outside of the walls decides.
    private const double GoodAngle = Math.PI / 9.0;

    // Twenty decibels below the link that the two antennas would have face to face, the level is good to a few decibels only.
    private const double WeakLink = 0.01;

    internal static Trust Of(Antenna source, Pose sourcePose, Antenna receiver, Pose receiverPose, double link)
    {
        Vector between = receiverPose.Position - sourcePose.Position;
        double distance = between.Length;
        double offSource = AngleOff(sourcePose, between);
        double offReceiver = AngleOff(receiverPose, -between);
        double worst = Math.Max(offSource, offReceiver);
        if (distance < source.Wavelength)
        {
            return new Trust(TrustLevel.Outside, "The mouths are closer than a wavelength; what goes to and fro between them is left out.");
        }

        if (worst > FarPattern.TrustedAngle)
        {
            return new Trust(TrustLevel.Outside, Sentence(offSource, offReceiver, "beyond 60° the outside of the walls decides, which is left out"));
        }

        if (link < WeakLink * FaceToFace(source, receiver, distance))
        {
            return new Trust(TrustLevel.Rough, "The signal is over 20 dB below that of antennas face to face: good to a few decibels only.");
        }

        return worst > GoodAngle
            ? new Trust(TrustLevel.Rough, Sentence(offSource, offReceiver, "beyond 20° the prediction is good to a decibel or two"))
            : new Trust(TrustLevel.Good, "Close to both axes: good to about half a decibel.");
    }

    private static double FaceToFace(Antenna source, Antenna receiver, double distance)
    {
        double spread = source.Wavelength / (4.0 * Math.PI * distance);
        return source.RealisedGain * receiver.RealisedGain * spread * spread;
    }

    private static double AngleOff(Pose pose, Vector towards) =>
        Math.Acos(Math.Clamp(Vector.Dot(pose.Forward, towards) / towards.Length, -1.0, 1.0));

    private static string Sentence(double offSource, double offReceiver, string consequence)
    {
        (double angle, string ends) = offSource >= offReceiver
            ? (offSource, "The receiver stands {0}° off the source's axis")
            : (offReceiver, "The source stands {0}° off the receiver's axis");
        string degrees = (angle * 180.0 / Math.PI).ToString("F0", CultureInfo.InvariantCulture);
        return string.Format(CultureInfo.InvariantCulture, ends, degrees) + ": " + consequence + ".";
    }
}
