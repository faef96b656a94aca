using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations;

/// <summary>How hands move what stands on the bench. Geometry only.</summary>
public static class Moves
{
    /// <summary>The receiver on the source's axis, its mouth at a distance from the source's.</summary>
    /// <param name="source">The sending end.</param>
    /// <param name="receiver">The receiving end, whose direction is kept.</param>
    /// <param name="distance">Mouth to mouth [m].</param>
    public static ReceiverEnd OnAxis(SourceEnd source, ReceiverEnd receiver, double distance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return receiver with { Pose = receiver.Pose with { Position = source.Pose.ToBench(new Vector(distance, 0.0, 0.0)) } };
    }

    /// <summary>The receiver on the line from the source to where it stands, its mouth at another distance from the source's; its direction is kept.</summary>
    internal static ReceiverEnd AlongSight(SourceEnd source, ReceiverEnd receiver, double distance)
    {
        Vector sight = receiver.Pose.Position - source.Pose.Position;
        return receiver with { Pose = receiver.Pose with { Position = source.Pose.Position + (sight.Unit * distance) } };
    }

    /// <summary>Benches with a panel that the beam goes through in a few places along it: where it stands, close to the source, half way, close to the receiver.</summary>
    /// <remarks>Close is four wavelengths from a mouth: the whole beam goes through, and little stands between mouth and panel.</remarks>
    internal static IReadOnlyList<BenchPlan> InBeam(BenchPlan plan, double reach, string panel)
    {
        BenchPlan bench = plan with { Receiver = AlongSight(plan.Source, plan.Receiver, reach) };
        double close = 4.0 * FreeSpace.Wavelength(plan.Frequency);
        Vector from = plan.Source.Pose.Position, sight = (bench.Receiver.Pose.Position - from).Unit;
        IEnumerable<double> places = new[] { close, 0.5 * reach, reach - close }.Where(place => place >= close && place <= reach - close);
        return
        [
            bench,
            .. places.Select(place => bench with
            {
                Panels = [.. plan.Panels.Select(p => p.Name == panel ? p with { Pose = p.Pose with { Position = from + (sight * place) } } : p)],
            }),
        ];
    }

    /// <summary>Turned further about the vertical, on the spot.</summary>
    internal static Pose Turned(this Pose pose, double angle) => pose with { Turn = pose.Turn + angle };

    /// <summary>Rolled further about its own axis.</summary>
    internal static Pose Rolled(this Pose pose, double angle) => pose with { Roll = pose.Roll + angle };

    /// <summary>Flipped over about its own upright, like a page: its other face looks where its front looked.</summary>
    internal static Pose Flipped(this Pose pose) => pose with { Turn = pose.Turn + Math.PI, Tilt = -pose.Tilt, Roll = -pose.Roll };

    /// <summary>The receiver rolled so that its field turns as that of a source does which is rolled by an angle: facing it, the other way round.</summary>
    internal static ReceiverEnd RolledWith(this ReceiverEnd receiver, SourceEnd source, double angle)
    {
        double sense = Vector.Dot(source.Pose.Forward, receiver.Pose.Forward) < 0.0 ? -1.0 : 1.0;
        return receiver with { Pose = receiver.Pose.Rolled(sense * angle) };
    }

    /// <summary>Moved along a direction of its own frame.</summary>
    internal static Pose Shifted(this Pose pose, Vector own) => pose with { Position = pose.ToBench(own) };

    /// <summary>Swung about a vertical line through a point: place and direction turn together.</summary>
    internal static Pose Swung(this Pose pose, Vector about, double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        Vector arm = pose.Position - about;
        Vector swung = new((arm.X * cos) - (arm.Y * sin), (arm.X * sin) + (arm.Y * cos), arm.Z);
        return pose with { Position = about + swung, Turn = pose.Turn + angle };
    }

    /// <summary>The panel of a name that the file is known to have.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    internal static BenchPanel Named(this IReadOnlyList<BenchPanel> panels, string name) =>
        panels.FirstOrDefault(panel => panel.Name == name) ?? throw new KeyNotFoundException($"no panel is called '{name}'");

    /// <summary>The panels with one of them put in and held as a function of its pose says; the others stay as they are.</summary>
    /// <exception cref="KeyNotFoundException">There is no panel of that name.</exception>
    internal static IReadOnlyList<BenchPanel> PutIn(this IReadOnlyList<BenchPanel> panels, string name, Func<Pose, Pose>? held = null)
    {
        BenchPanel wanted = panels.Named(name);
        return [.. panels.Select(panel => panel == wanted
            ? panel with { Stands = true, Pose = held is null ? panel.Pose : held(panel.Pose) }
            : panel)];
    }

    /// <summary>The panels with one of them laid aside; the others stay as they are.</summary>
    internal static IReadOnlyList<BenchPanel> Without(this IReadOnlyList<BenchPanel> panels, string name) =>
        [.. panels.Select(panel => panel.Name == name ? panel with { Stands = false } : panel)];

    /// <summary>Values from first to last, evenly.</summary>
    internal static IEnumerable<double> Evenly(double from, double to, int points) =>
        Enumerable.Range(0, points).Select(i => from + ((to - from) * i / (points - 1)));
}
