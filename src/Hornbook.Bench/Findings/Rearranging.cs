using System.Globalization;
using Hornbook.Bench.Demonstrations;
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

    // As fine as a heavy end is set by hand [m].
    private const double Hand = 0.01;

    /// <summary>The receiver moved along the line of sight to a distance from the source's mouth [m].</summary>
    internal static Mend Receiver(BenchPlan plan, double distance, string move) =>
        ReceiverAt(plan, distance) is { } moved && IsNoWorse(plan, moved)
            ? Setting(move, Place("receiver", moved.Receiver.Pose.Position))
            : new Mend(move);

    /// <summary>
    /// The receiver moved away along the line of sight until something holds, as long as it is heard there; where the table ends before, the
    /// source is moved back too, as far as there is table under it and nobody at an edge gets too much.
    /// </summary>
    /// <param name="bench">The bench.</param>
    /// <param name="holds">What has to hold.</param>
    /// <param name="ending">What follows "Move the receiver to 65 cm from the source's mouth".</param>
    /// <param name="otherwise">What to say where the table is too short.</param>
    internal static Mend Farther(Inspection bench, Predicate<BenchPlan> holds, string ending, string otherwise)
    {
        int last = (int)(double.Hypot(bench.Plan.Table.Length, bench.Plan.Table.Width) / Step);
        for (int i = (int)(bench.Distance / Step) + 1; i <= last; i += Math.Max(1, i / 20))
        {
            bench.Cancellation.ThrowIfCancellationRequested();
            double distance = i * Step;
            if (ReceiverAt(bench.Plan, distance) is { } moved)
            {
                if (IsWanted(moved))
                {
                    return Receiver(bench.Plan, distance, $"Move the receiver to {InWords.Length(distance)} from the source's mouth{ending}");
                }
            }
            else if (Apart(bench.Plan, distance) is { } apart && ExposureFindings.KeepsEdges(bench, apart.Source) && IsWanted(apart) && IsNoWorse(bench.Plan, apart))
            {
                double back = (apart.Source.Pose.Position - bench.Source.Pose.Position).Length;
                return AsIn(apart, $"Move the source back by {InWords.Length(back)}, and the receiver to {InWords.Length(distance)} from its mouth{ending}");
            }
        }

        return new Mend(otherwise);

        bool IsWanted(BenchPlan moved) => holds(moved) && bench.Scene.Read(moved.Source, moved.Receiver).Heard.State != ToneState.Drowned;
    }

    /// <summary>The bench with the receiver at a distance from the source's mouth [m]; null where there is no table under it.</summary>
    internal static BenchPlan? ReceiverAt(BenchPlan plan, double distance)
    {
        Vector place = plan.Source.Pose.Position + (Sight(plan) * distance);
        return IsOver(plan.Table, place) ? plan with { Receiver = plan.Receiver with { Pose = plan.Receiver.Pose with { Position = place } } } : null;
    }

    /// <summary>The source moved back along the line of sight, as little as lets the receiver stand at a distance from it [m]; null where the table is too short.</summary>
    private static BenchPlan? Apart(BenchPlan plan, double distance)
    {
        Pose source = plan.Source.Pose;
        for (double back = Hand; back < distance; back += Hand)
        {
            Pose there = source with { Position = source.Position - (Sight(plan) * back) };
            if (!IsOver(plan.Table, there.Position) || PlaceFindings.Overhang(plan, plan.Source.Antenna, there) > 0.0)
            {
                return null;
            }

            if (ReceiverAt(plan with { Source = plan.Source with { Pose = there } }, distance) is { } moved)
            {
                return moved;
            }
        }

        return null;
    }

    /// <summary>From the source to the receiver; along the source's axis where both are in one place.</summary>
    private static Vector Sight(BenchPlan plan)
    {
        Vector way = plan.Receiver.Pose.Position - plan.Source.Pose.Position;
        return way.Length < SamePlace ? plan.Source.Pose.Forward : way.Unit;
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

    /// <summary>One panel moved; laid aside where it cannot stand there either.</summary>
    internal static Mend Panel(BenchPlan plan, BenchPanel panel, Vector shift, string move)
    {
        string name = panel.Name;
        BenchPanel there = panel with { Pose = panel.Pose with { Position = panel.Pose.Position + shift } };
        BenchPlan moved = plan with { Panels = [.. plan.Panels.Select(other => other.Name == name ? there : other)] };
        bool helps = IsOver(plan.Table, there.Pose.Position) && PanelFindings.TroublesOf(moved) < PanelFindings.TroublesOf(plan);
        return helps ? Setting($"{move}.", Place($"panels.{name}", there.Pose.Position)) : new Mend($"{move}, or lay it aside.", $"panels.{name}.aside", "true");
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

    private static bool IsNoWorse(BenchPlan before, BenchPlan after) =>
        PanelFindings.TroublesOf(after) <= PanelFindings.TroublesOf(before) && PlaceFindings.TroublesOf(after) <= PlaceFindings.TroublesOf(before);
}
