using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Links;

namespace Hornbook.Bench.Findings;

/// <summary>What a bare table top could at most add to the straight wave or take from it, found by images.</summary>
/// <param name="Clearance">From the table up to the middle of the line of sight [m].</param>
/// <param name="FresnelRadius">First Fresnel zone in the middle of the path, ½ √(λr) [m].</param>
/// <param name="Mirrored">The wave from the source mirrored in the table over the straight one [-]: all that a table could return.</param>
/// <param name="Wood">Share of that which wood returns at this angle, at the thickness that returns most [-].</param>
internal sealed record TableBounce(double Clearance, double FresnelRadius, double Mirrored, double Wood)
{
    /// <summary>How much wood may move the reading either way [dB].</summary>
    internal double WoodDb => SwingDb(Mirrored * Wood);

    /// <summary>How much metal may move the reading either way [dB].</summary>
    internal double MetalDb => SwingDb(Mirrored);

    internal static TableBounce Of(Scene scene, SourceEnd source, ReceiverEnd receiver) => new(
        0.5 * (source.Pose.Position.Z + receiver.Pose.Position.Z),
        0.5 * Math.Sqrt(scene.Antenna(source.Antenna).Wavelength * (receiver.Pose.Position - source.Pose.Position).Length),
        Amplitude(scene, source, Mirror(source.Pose), receiver) / Math.Max(Amplitude(scene, source, source.Pose, receiver), double.Epsilon),
        TableReflection.OfWood(source.Pose, receiver.Pose));

    /// <summary>The straight link, whatever else stands on the table.</summary>
    private static double Amplitude(Scene scene, SourceEnd source, Pose sending, ReceiverEnd receiver) =>
        Link.Amplitude(scene.Antenna(source.Antenna), sending, scene.Antenna(receiver.Antenna), receiver.Pose).Magnitude;

    private static double SwingDb(double bounce) => 2.0 * Decibels.FromRatio(1.0 + bounce);

    /// <summary>The image in the table top: antennas are symmetric about their own planes, so mirroring reverses tilt and roll only.</summary>
    private static Pose Mirror(Pose pose) => new(
        new Vector(pose.Position.X, pose.Position.Y, -pose.Position.Z), pose.Turn, -pose.Tilt, -pose.Roll);
}
