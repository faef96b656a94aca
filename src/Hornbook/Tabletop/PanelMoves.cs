using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Tabletop.Hands;

namespace Hornbook.Tabletop;

/// <summary>What is done with whole panels; each is one step that can be undone.</summary>
public static class PanelMoves
{
    /// <summary>Puts a panel in, or lays it aside.</summary>
    public static void Stand(this BenchSession session, BenchPanel panel, bool stands)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(panel);
        session.Do(
            stands ? $"putting in '{panel.Name}'" : $"laying '{panel.Name}' aside",
            [BenchChange.ToTruth($"{BenchThing.Panel(panel.Name).Table}.aside", !stands)]);
    }

    /// <summary>Turns a panel about its upright by half a turn: its back comes to the front.</summary>
    public static void Flip(this BenchSession session, BenchPanel panel)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(panel);
        BenchThing thing = BenchThing.Panel(panel.Name);
        Pose pose = session.PoseOf(thing);

        // Half a turn about its own upright: the other face looks forwards, and what was rolled one way is rolled the other.
        Pose flipped = pose with { Turn = PoseSteps.InOneTurn(pose.Turn + Math.PI), Tilt = -pose.Tilt, Roll = PoseSteps.InOneTurn(-pose.Roll) };
        session.Do($"flipping '{panel.Name}'", BenchChange.ToPose(thing.Table, flipped));
    }

    /// <summary>One more of the same, a hand's breadth further along the bench.</summary>
    public static void Copy(this BenchSession session, BenchPanel panel)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(panel);
        string name = FreeName(session, panel.Name);
        Pose beside = session.Sheet.Held(panel.Pose with { Position = panel.Pose.Position + new Vector(0.1, 0.0, 0.0) });
        session.Do(
            $"copying '{panel.Name}'",
            [BenchChange.ToCopy(BenchThing.Panel(panel.Name).Table, name), .. BenchChange.ToPose(BenchThing.Panel(name).Table, beside)]);
    }

    /// <summary>Takes a panel off the bench and out of its file.</summary>
    public static void Remove(this BenchSession session, BenchPanel panel)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(panel);
        session.Do($"removing '{panel.Name}'", [BenchChange.ToNothing(BenchThing.Panel(panel.Name).Table)]);
    }

    /// <summary>A new panel of customary size, half way between the mouths.</summary>
    /// <param name="session">The bench.</param>
    /// <param name="kind">One of <see cref="PanelText.Kinds"/>.</param>
    public static void Add(this BenchSession session, string kind)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentException.ThrowIfNullOrEmpty(kind);
        string name = FreeName(session, kind.Replace(' ', '-'));
        Pose halfWay = new((session.Source.Pose.Position + session.Receiver.Pose.Position) * 0.5);
        session.Do(
            $"adding a {kind}",
            [BenchChange.ToNew(BenchThing.Panel(name).Table, PanelText.Lines(kind)), .. BenchChange.ToPose(BenchThing.Panel(name).Table, halfWay)]);
    }

    /// <summary>A new panel of customary size that consists of a chosen sheet, laid aside half way between the mouths until it is put in.</summary>
    /// <param name="session">The bench.</param>
    /// <param name="sheet">A grid or a single layer.</param>
    /// <returns>What it is called.</returns>
    public static string Add(this BenchSession session, ISheet sheet)
    {
        ArgumentNullException.ThrowIfNull(session);
        IReadOnlyList<string> lines = PanelText.Lines(sheet);
        string name = FreeName(session, sheet is LayeredSheet ? "chosen-sheet" : "chosen-grid");
        string table = BenchThing.Panel(name).Table;
        Pose halfWay = new((session.Source.Pose.Position + session.Receiver.Pose.Position) * 0.5);
        session.Do($"adding '{name}'", [BenchChange.ToNew(table, [.. lines, "aside = true"]), .. BenchChange.ToPose(table, halfWay)]);
        return name;
    }

    private static string FreeName(BenchSession session, string like) => Naming.Free(like, session.Plan.Panels.Select(panel => panel.Name));
}
