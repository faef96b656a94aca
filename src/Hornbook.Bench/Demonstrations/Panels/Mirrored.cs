using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Sheets;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>An endless mirror and the two ways by which a wave then reaches the receiver: straight, and as if from the source's image.</summary>
/// <param name="Panel">The mirror.</param>
/// <param name="Face">Its face: half its thickness before its middle [m].</param>
/// <param name="Normal">Out of its front, of length one.</param>
/// <param name="Pose">How it is held.</param>
internal sealed record Mirrored(Panel Panel, Vector Face, Vector Normal, Pose Pose)
{
    internal static Mirrored In(BenchPanel panel) => In(panel.Panel, panel.Pose);

    internal static Mirrored In(Panel panel, Pose pose) => new(panel, pose.Position + (pose.Forward * (0.5 * panel.Sheet.Thickness)), pose.Forward, pose);

    /// <summary>By how much the mirrored way is longer than the straight one, mouth to mouth [m].</summary>
    internal double Longer(Setting setting)
    {
        Vector source = setting.Source.Pose.Position, receiver = setting.Receiver.Pose.Position;
        return (receiver - Image(source)).Length - (receiver - source).Length;
    }

    /// <summary>The mirrored wave over the straight one, without what the longer way makes of its phase [-]: patterns, spreading and the mirror's own answer.</summary>
    internal Complex Beside(Scene scene, Setting setting)
    {
        (Pose from, Pose to) = (setting.Source.Pose, setting.Receiver.Pose);
        Vector straight = to.Position - from.Position;
        Vector arriving = to.Position - Image(from.Position);
        Vector leaving = Flipped(arriving);
        double spread = straight.Length / arriving.Length;
        return spread * Share(scene.Antenna(setting.Source.Antenna), from, leaving, straight)
            * Share(scene.Antenna(setting.Receiver.Antenna), to, -arriving, -straight)
            * Answer(scene.Plan.Frequency, leaving.Unit, Across(from.Up, leaving.Unit), to.Up)
            / Vector.Dot(Across(from.Up, straight.Unit), to.Up);
    }

    private Vector Image(Vector point) => point - (Normal * (2.0 * Vector.Dot(point - Face, Normal)));

    private Vector Flipped(Vector direction) => direction - (Normal * (2.0 * Vector.Dot(direction, Normal)));

    // What of a field is across its way, of length one: an antenna's field in any direction is close to that.
    private static Vector Across(Vector up, Vector way) => (up - (way * Vector.Dot(up, way))).Unit;

    private static double Share(Antenna antenna, Pose pose, Vector way, Vector straight) =>
        Math.Sqrt(antenna.DirectivityTowards(Own(pose, way)) / antenna.DirectivityTowards(Own(pose, straight)));

    private static Vector Own(Pose pose, Vector direction) => pose.ToOwn(pose.Position + direction).Unit;

    // The tangential part of the field by the sheet's own matrix; the part along the normal follows, as the wave is across its way.
    private Complex Answer(double frequency, Vector way, Vector field, Vector receiver)
    {
        (Vector left, Vector up) = (Pose.Left, Pose.Up);
        (double u, double v) = (Vector.Dot(way, left), Vector.Dot(way, up));
        (Complex across, Complex along) = Panel.Sheet.At(frequency).Arriving(SheetFace.Front, u, v).Reflection.Of(Vector.Dot(field, left), Vector.Dot(field, up));
        Complex normal = -((across * u) + (along * v)) / -Vector.Dot(way, Normal);
        Complex received = (across * Vector.Dot(left, receiver)) + (along * Vector.Dot(up, receiver)) + (normal * Vector.Dot(Normal, receiver));

        // The sheet's numbers are referred to its middle plane; the ways here turn back at its face.
        return received * Complex.Exp(new Complex(0.0, FreeSpace.Wavenumber(frequency) * Panel.Sheet.Thickness * Vector.Dot(way, Normal)));
    }
}
