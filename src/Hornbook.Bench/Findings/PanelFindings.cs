using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the panels that stand can stand where they do.</summary>
internal static class PanelFindings
{
    /// <summary>A panel may reach this far into the table top before it is said: what a ruler shows [m].</summary>
    private const double Sunk = 1e-3;

    internal static IEnumerable<Finding> Of(BenchPlan plan)
    {
        StandingPanel[] standing = [.. plan.Panels.Where(panel => panel.Stands).Select(panel => new StandingPanel(panel))];
        return
        [
            .. standing.SelectMany(panel => OnTable(plan, panel.Panel)),
            .. standing.SelectMany(panel => TooLow(panel)),
            .. standing.SelectMany(panel => AtMouth(plan, panel, "source", plan.Source.Pose, plan.Source.Antenna)),
            .. standing.SelectMany(panel => AtMouth(plan, panel, "receiver", plan.Receiver.Pose, plan.Receiver.Antenna)),
            .. standing.SelectMany((panel, i) => standing.Skip(i + 1).Where(panel.Cuts).Select(other => Cutting(panel.Panel, other.Panel))),
        ];
    }

    /// <summary>How many of these troubles there are, without what would mend them: a mend asks this of the bench that it would make.</summary>
    internal static int TroublesOf(BenchPlan plan)
    {
        StandingPanel[] standing = [.. plan.Panels.Where(panel => panel.Stands).Select(panel => new StandingPanel(panel))];
        return standing.Count(panel => PlaceFindings.Beyond(plan.Table, panel.Panel.Pose.Position) > 0.0)
            + standing.Count(panel => panel.Lowest < -Sunk)
            + standing.Count(panel => NearMouth(plan, panel, plan.Source.Pose, plan.Source.Antenna) is not null)
            + standing.Count(panel => NearMouth(plan, panel, plan.Receiver.Pose, plan.Receiver.Antenna) is not null)
            + standing.SelectMany((panel, i) => standing.Skip(i + 1).Where(panel.Cuts)).Count();
    }

    private static IEnumerable<Finding> OnTable(BenchPlan plan, BenchPanel panel)
    {
        double beyond = PlaceFindings.Beyond(plan.Table, panel.Pose.Position);
        if (beyond > 0.0)
        {
            yield return new Finding(Severity.Spoils, "panel-off-table",
                $"The middle of the panel '{panel.Name}' stands {InWords.Length(beyond)} beyond the table's edge.",
                "There is nothing under it.",
                PlaceFindings.Inwards(plan.Table, panel.Pose.Position, $"panel '{panel.Name}'", $"panels.{panel.Name}"));
        }
    }

    private static IEnumerable<Finding> TooLow(StandingPanel panel)
    {
        if (panel.Lowest < -Sunk)
        {
            yield return new Finding(Severity.Spoils, "panel-too-low",
                $"The panel '{panel.Panel.Name}' reaches {InWords.Length(-panel.Lowest)} below the table top.",
                "It cannot stand like that.",
                Raise(panel.Panel, panel.Panel.Pose.Position.Z - panel.Lowest));
        }
    }

    private static Mend Raise(BenchPanel panel, double height)
    {
        string text = InWords.Length(Math.Ceiling(height * 100.0) / 100.0);
        return new Mend($"Raise the middle of the panel '{panel.Name}' to {text}.", $"panels.{panel.Name}.z", InWords.Typed(text));
    }

    private static IEnumerable<Finding> AtMouth(BenchPlan plan, StandingPanel panel, string end, Pose pose, string antenna)
    {
        double wavelength = FreeSpace.Wavelength(plan.Frequency);
        if (NearMouth(plan, panel, pose, antenna) is double distance)
        {
            yield return new Finding(Severity.Spoils, "panel-at-mouth",
                $"The panel '{panel.Panel.Name}' is {InWords.Length(distance)} from the {end}'s mouth, less than half a wavelength ({InWords.Length(0.5 * wavelength)}).",
                "It changes what the antenna itself does; the prediction leaves that out and is worth nothing here.",
                Rearranging.Panel(plan, panel.Panel, Away(panel.Panel, pose) * (wavelength - distance), $"Move the panel '{panel.Panel.Name}' at least {InWords.Length(wavelength)} away from it"));
        }
    }

    /// <summary>How far a panel is from a mouth, where that is less than half a wavelength [m]; else null.</summary>
    private static double? NearMouth(BenchPlan plan, StandingPanel panel, Pose pose, string antenna)
    {
        AntennaShape? shape = plan.Antennas.FirstOrDefault(a => a.Name == antenna)?.Shape;
        double? distance = shape is null ? null : panel.DistanceFrom(Mouth(shape, pose));
        return distance < 0.5 * FreeSpace.Wavelength(plan.Frequency) ? distance : null;
    }

    /// <summary>Along the axis of a mouth, to the side of it on which a panel stands.</summary>
    private static Vector Away(BenchPanel panel, Pose mouth) =>
        Vector.Dot(panel.Pose.Position - mouth.Position, mouth.Forward) < 0.0 ? -mouth.Forward : mouth.Forward;

    private static Finding Cutting(BenchPanel panel, BenchPanel other) => new(Severity.Spoils, "panels-cross",
        $"The panels '{panel.Name}' and '{other.Name}' cut through each other.",
        "They cannot stand like that.",
        new Mend($"Move one of them, or lay '{other.Name}' aside.", $"panels.{other.Name}.aside", "true"));

    /// <summary>Nine points of a mouth: its middle, its corners and the middles of its sides.</summary>
    private static IEnumerable<Vector> Mouth(AntennaShape shape, Pose pose) =>
        from y in new[] { -0.5, 0.0, 0.5 }
        from z in new[] { -0.5, 0.0, 0.5 }
        select pose.ToBench(new Vector(0.0, y * shape.MouthWidth, z * shape.MouthHeight));
}
