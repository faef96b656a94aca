using System.Globalization;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Findings;

/// <summary>Mends that move things about. Where the move would bring another trouble, they are words for a person to judge.</summary>
internal static class Rearranging
{
    private const double SamePlace = 1e-6;

    // Of a search for a place: as fine as a hand sets one without a rule, and coarser far away.
    private const double Step = 0.05;

    /// <summary>The receiver moved along the line of sight to a distance from the source's mouth [m].</summary>
    internal static Mend Receiver(BenchPlan plan, double distance, string move) =>
        ReceiverAt(plan, distance) is { } moved && IsNoWorse(plan, moved)
            ? Setting(move, Place("receiver", moved.Receiver.Pose.Position))
            : new Mend(move);

    /// <summary>The receiver moved away along the line of sight until something holds, as long as it is heard there.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="holds">What has to hold.</param>
    /// <param name="move">The move to a distance from the source's mouth [m].</param>
    /// <param name="otherwise">What to say where the table ends before.</param>
    internal static Mend Farther(Inspection bench, Predicate<BenchPlan> holds, Func<double, string> move, string otherwise)
    {
        int last = (int)(double.Hypot(bench.Plan.Table.Length, bench.Plan.Table.Width) / Step);
        for (int i = (int)(bench.Distance / Step) + 1; i <= last && ReceiverAt(bench.Plan, i * Step) is { } moved; i += Math.Max(1, i / 20))
        {
            if (holds(moved) && bench.Scene.Read(moved.Source, moved.Receiver).Heard.State != ToneState.Drowned)
            {
                return Receiver(bench.Plan, i * Step, move(i * Step));
            }
        }

        return new Mend(otherwise);
    }

    /// <summary>The bench with the receiver at a distance from the source's mouth [m]; null where there is no table under it.</summary>
    internal static BenchPlan? ReceiverAt(BenchPlan plan, double distance)
    {
        Vector way = plan.Receiver.Pose.Position - plan.Source.Pose.Position;
        Vector towards = way.Length < SamePlace ? plan.Source.Pose.Forward : way * (1.0 / way.Length);
        Vector place = plan.Source.Pose.Position + (towards * distance);
        return IsOver(plan.Table, place) ? plan with { Receiver = plan.Receiver with { Pose = plan.Receiver.Pose with { Position = place } } } : null;
    }

    /// <summary>Both ends and the panels that stand moved by as much, so that nothing changes between them; null where the table is too small.</summary>
    internal static BenchPlan? Everything(BenchPlan plan, Vector shift)
    {
        BenchPlan moved = plan with
        {
            Source = plan.Source with { Pose = Moved(plan.Source.Pose) },
            Receiver = plan.Receiver with { Pose = Moved(plan.Receiver.Pose) },
            Panels = [.. plan.Panels.Select(panel => panel.Stands ? panel with { Pose = Moved(panel.Pose) } : panel)],
        };
        Vector[] places = [moved.Source.Pose.Position, moved.Receiver.Pose.Position, .. moved.Panels.Where(panel => panel.Stands).Select(panel => panel.Pose.Position)];
        return places.All(place => IsOver(plan.Table, place)) ? moved : null;

        Pose Moved(Pose pose) => pose with { Position = pose.Position + shift };
    }

    /// <summary>A move that puts both ends, and the panels that stand, where they are in another bench.</summary>
    internal static Mend AsIn(BenchPlan moved, string move) => Setting(move,
    [
        .. Place("source", moved.Source.Pose.Position),
        .. Place("receiver", moved.Receiver.Pose.Position),
        .. moved.Panels.Where(panel => panel.Stands).SelectMany(panel => Place($"panels.{panel.Name}", panel.Pose.Position)),
    ]);

    /// <summary>One panel moved.</summary>
    internal static Mend Panel(BenchPlan plan, BenchPanel panel, Vector shift, string move)
    {
        BenchPanel there = panel with { Pose = panel.Pose with { Position = panel.Pose.Position + shift } };
        BenchPlan moved = plan with { Panels = [.. plan.Panels.Select(other => other.Name == panel.Name ? there : other)] };
        bool helps = IsOver(plan.Table, there.Pose.Position) && PanelFindings.TroublesOf(moved) < PanelFindings.TroublesOf(plan);
        return helps ? Setting(move, Place($"panels.{panel.Name}", there.Pose.Position)) : new Mend(move);
    }

    /// <summary>A move that sets several values.</summary>
    internal static Mend Setting(string move, params IReadOnlyList<MendedKey> keys) => new(move, keys[0].Key, keys[0].NewText) { Also = [.. keys.Skip(1)] };

    // To a tenth of a millimetre: three digits, as in words, could fall short of what is needed.
    private static MendedKey[] Place(string table, Vector place)
    {
        return [At("x", place.X), At("y", place.Y), At("z", place.Z)];

        MendedKey At(string axis, double metres) => new($"{table}.{axis}", string.Create(CultureInfo.InvariantCulture, $"{100.0 * metres:0.##} cm"));
    }

    private static bool IsOver(TableTop table, Vector place) => PlaceFindings.Beyond(table, place) == 0.0 && place.Z > 0.0;

    private static bool IsNoWorse(BenchPlan before, BenchPlan after) => PanelFindings.TroublesOf(after) <= PanelFindings.TroublesOf(before);
}
