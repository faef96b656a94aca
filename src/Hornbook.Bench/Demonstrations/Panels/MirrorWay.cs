using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>How an upright panel and the receiver are held so that the receiver stands in the source's mirror direction. Geometry only.</summary>
internal static class MirrorWay
{
    /// <summary>An upright panel, its front turned to the source and then turned on by the angle of incidence.</summary>
    /// <param name="panel">The panel's pose, whose place and roll are kept.</param>
    /// <param name="source">The place of the source [m].</param>
    /// <param name="incidence">Between wave and normal [rad]; positive turns the panel to the left.</param>
    internal static Pose Panel(Pose panel, Vector source, double incidence) => new(panel.Position, Bearing(panel, source) + incidence, 0.0, panel.Roll);

    /// <summary>The receiver where the mirrored wave goes, as far from the panel's middle as it was and looking at it.</summary>
    /// <param name="receiver">The receiver's pose, whose roll is kept.</param>
    /// <param name="panel">The panel's pose, of which its place counts.</param>
    /// <param name="source">The place of the source [m].</param>
    /// <param name="incidence">As for the panel [rad].</param>
    internal static Pose Receiver(Pose receiver, Pose panel, Vector source, double incidence)
    {
        double distance = (receiver.Position - panel.Position).Length;
        double tilt = Math.Asin((source - panel.Position).Unit.Z);
        double bearing = Bearing(panel, source) + (2.0 * incidence);
        Vector away = new(Math.Cos(tilt) * Math.Cos(bearing), Math.Cos(tilt) * Math.Sin(bearing), -Math.Sin(tilt));
        return new Pose(panel.Position + (away * distance), bearing + Math.PI, tilt, receiver.Roll);
    }

    private static double Bearing(Pose panel, Vector source) => Math.Atan2(source.Y - panel.Position.Y, source.X - panel.Position.X);
}
