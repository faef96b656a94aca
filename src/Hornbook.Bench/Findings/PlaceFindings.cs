using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Findings;

/// <summary>Whether source and receiver stand on the table with room to spare.</summary>
internal static class PlaceFindings
{
    internal static IEnumerable<Finding> Of(BenchPlan plan) =>
    [
        .. Of(plan, "source", plan.Source.Pose, plan.Source.Antenna),
        .. Of(plan, "receiver", plan.Receiver.Pose, plan.Receiver.Antenna),
        .. Touching(plan),
    ];

    /// <summary>How far a place lies beyond the table's edge [m]; 0 on the table.</summary>
    internal static double Beyond(TableTop table, Vector place)
    {
        double x = Math.Max(0.0, Math.Max(-place.X, place.X - table.Length));
        double y = Math.Max(0.0, Math.Abs(place.Y) - (table.Width / 2.0));
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>How many ends cannot stand where they are: a mend asks this of the bench that it would make.</summary>
    internal static int TroublesOf(BenchPlan plan) => new[] { (plan.Source.Antenna, plan.Source.Pose), (plan.Receiver.Antenna, plan.Receiver.Pose) }
        .Count(held => Beyond(plan.Table, held.Pose.Position) > 0.0 || Lowest(plan.Antenna(held.Antenna), held.Pose) < 0.0);

    /// <summary>How far an antenna's throat reaches beyond the table's edge [m]; 0 over the table.</summary>
    internal static double Overhang(BenchPlan plan, string antenna, Pose pose) => Beyond(plan.Table, Back(plan.Antenna(antenna), pose));

    private static IEnumerable<Finding> Of(BenchPlan plan, string end, Pose pose, string antenna)
    {
        AntennaShape shape = plan.Antenna(antenna);
        double beyond = Beyond(plan.Table, pose.Position);
        if (beyond > 0.0)
        {
            yield return OffTable(plan, end, pose, beyond);
        }
        else if (Overhang(plan, antenna, pose) is double overhang && overhang > 0.0)
        {
            yield return new Finding(Severity.Note, "antenna-overhangs",
                $"The throat of the {end}'s antenna '{antenna}' reaches {InWords.Length(overhang)} beyond the table's edge.",
                "Its guide and oscillator or detector must be held from outside the table.",
                MoveInwards(plan, end, Back(shape, pose), overhang));
        }

        double clearance = Lowest(shape, pose);
        if (clearance < 0.0)
        {
            yield return new Finding(Severity.Spoils, "antenna-too-low",
                $"The {end}'s mouth reaches {InWords.Length(-clearance)} below the table top.",
                "It cannot stand like that.",
                Raise(end, pose.Position.Z - clearance));
        }
    }

    /// <summary>Everything moved inwards by a millimetre more than the overhang, where the other end then does not overhang in its turn.</summary>
    private static Mend MoveInwards(BenchPlan plan, string end, Vector back, double overhang)
    {
        const double ToSpare = 1e-3;
        Vector inside = new(Math.Clamp(back.X, 0.0, plan.Table.Length), Math.Clamp(back.Y, -plan.Table.Width / 2.0, plan.Table.Width / 2.0), back.Z);
        BenchPlan? moved = Rearranging.Everything(plan, (inside - back) * ((overhang + ToSpare) / overhang));
        bool fits = moved is not null && new[] { (moved.Source.Antenna, moved.Source.Pose), (moved.Receiver.Antenna, moved.Receiver.Pose) }
            .All(held => Overhang(plan, held.Antenna, held.Pose) == 0.0);
        return fits
            ? Rearranging.AsIn(moved!, $"Move both ends {InWords.Length(overhang)} inwards, panels too, or stand the {end} on an arm.")
            : new Mend($"Stand the {end} on an arm beyond the edge: the table has no room to move everything {InWords.Length(overhang)} inwards.");
    }

    private static Finding OffTable(BenchPlan plan, string end, Pose pose, double beyond) => new(Severity.Spoils, "off-table",
        $"The {end} stands {InWords.Length(beyond)} beyond the table's edge.",
        "There is nothing under it.",
        InwardsOf(plan, end, pose.Position));

    /// <summary>Back to the edge, but not into the mouth of the other end.</summary>
    private static Mend InwardsOf(BenchPlan plan, string end, Vector place)
    {
        Mend inwards = Inwards(plan.Table, place, end, end);
        Vector other = end == "source" ? plan.Receiver.Pose.Position : plan.Source.Pose.Position;
        return (AtEdge(plan.Table, place) - other).Length >= FreeSpace.Wavelength(plan.Frequency)
            ? inwards
            : new Mend($"{inwards.Move.TrimEnd('.')}, and first the other end away from there.");
    }

    /// <summary>The move that brings a thing back to the table's edge.</summary>
    /// <param name="table">The table.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="what">What it is called.</param>
    /// <param name="key">Its table in the bench file.</param>
    internal static Mend Inwards(TableTop table, Vector place, string what, string key)
    {
        Vector edge = AtEdge(table, place);
        bool along = edge.X != place.X;
        string where = along ? $"x = {InWords.Length(edge.X)}" : $"y = {InWords.Length(edge.Y)}";
        return new Mend($"Move the {what} to {where}.", $"{key}.{(along ? "x" : "y")}", InWords.Typed(InWords.Length(along ? edge.X : edge.Y)));
    }

    /// <summary>The nearest place over the table, the bench's length first: one move at a time.</summary>
    private static Vector AtEdge(TableTop table, Vector place)
    {
        double x = Math.Clamp(place.X, 0.0, table.Length);
        return x != place.X ? place with { X = x } : place with { Y = Math.Clamp(place.Y, -table.Width / 2.0, table.Width / 2.0) };
    }

    private static IEnumerable<Finding> Touching(BenchPlan plan)
    {
        double distance = (plan.Receiver.Pose.Position - plan.Source.Pose.Position).Length;
        double wavelength = FreeSpace.Wavelength(plan.Frequency);
        if (distance < wavelength)
        {
            yield return new Finding(Severity.Spoils, "mouths-touch",
                $"The two mouths are {InWords.Length(distance)} apart, less than one wavelength ({InWords.Length(wavelength)}).",
                "Each disturbs what the other does; the prediction leaves that out and is worth nothing here.",
                Rearranging.Receiver(plan, 3.0 * wavelength, $"Move the receiver at least {InWords.Length(3.0 * wavelength)} away."));
        }
    }

    internal static Mend Raise(string end, double height)
    {
        string text = InWords.Length(Math.Ceiling(height * 100.0) / 100.0);
        return new Mend($"Raise the {end}'s axis to {text}.", $"{end}.z", text);
    }

    /// <summary>Height of the lowest corner of a mouth above the table top [m].</summary>
    private static double Lowest(AntennaShape shape, Pose pose) => pose.Position.Z
        - (0.5 * ((shape.MouthWidth * Math.Abs(pose.Left.Z)) + (shape.MouthHeight * Math.Abs(pose.Up.Z))));

    private static Vector Back(AntennaShape shape, Pose pose) => pose.ToBench(new Vector(shape is Horn horn ? -horn.Length : 0.0, 0.0, 0.0));
}
