using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Panels;

/// <summary>How a bench with a panel is stretched or shrunk for another distance. Geometry only.</summary>
internal static class Arranged
{
    /// <summary>Mouths a distance apart, and the panel as large a share of the way between them as now; how far it stands aside is kept.</summary>
    internal static IReadOnlyList<BenchPlan> InProportion(BenchPlan plan, double reach, string panel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector sight = plan.Receiver.Pose.Position - plan.Source.Pose.Position;
        double stretch = (reach / sight.Length) - 1.0;
        return
        [
            plan with
            {
                Receiver = Moves.AlongSight(plan.Source, plan.Receiver, reach),
                Panels = Placed(plan.Panels, panel, place => place + (sight.Unit * (stretch * Vector.Dot(place - plan.Source.Pose.Position, sight.Unit)))),
            },
        ];
    }

    /// <summary>The panel on its line from the source, a distance away; the demonstration itself puts the receiver in its place beside it.</summary>
    internal static IReadOnlyList<BenchPlan> AtReach(BenchPlan plan, double reach, string panel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Vector source = plan.Source.Pose.Position;
        return [plan with { Panels = Placed(plan.Panels, panel, place => source + ((place - source).Unit * reach)) }];
    }

    /// <summary>A pose on its line from a point, at another distance from it; where none is given, as it is.</summary>
    internal static Pose AtDistance(Pose pose, Vector point, double? distance) => distance is double metres
        ? pose with { Position = point + ((pose.Position - point).Unit * metres) }
        : pose;

    private static IReadOnlyList<BenchPanel> Placed(IReadOnlyList<BenchPanel> panels, string name, Func<Vector, Vector> place) =>
        [.. panels.Select(panel => panel.Name == name ? panel with { Pose = panel.Pose with { Position = place(panel.Pose.Position) } } : panel)];
}
