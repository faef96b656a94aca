using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the demonstrations stay on the table.</summary>
internal static class CourseFindings
{
    /// <summary>A curve of fewer points shows no law.</summary>
    private const int FewestPoints = 3;

    /// <summary>Mouths are kept this many wavelengths apart: nearer they disturb each other.</summary>
    private const double Nearest = 3.0;

    internal static IEnumerable<Finding> Of(BenchPlan plan) => plan.Demonstrations.OfType<DistanceDemonstration>().SelectMany(d => Of(plan, d));

    private static IEnumerable<Finding> Of(BenchPlan plan, DistanceDemonstration demonstration)
    {
        IReadOnlyList<Setting> course = demonstration.Course(plan);
        Setting[] on = [.. course.Where(s => PlaceFindings.Beyond(plan.Table, s.Receiver.Pose.Position) == 0.0)];
        if (on.Length == course.Count)
        {
            yield break;
        }

        double farthestOff = course.Max(s => PlaceFindings.Beyond(plan.Table, s.Receiver.Pose.Position));
        string mend = InWords.Length(on.Select(s => s.At).DefaultIfEmpty(0.0).Max());
        yield return new Finding(
            on.Length == 0 ? Severity.Spoils : Severity.Weakens,
            "course-leaves-table",
            $"In '{demonstration.Name}' the receiver would go {InWords.Length(farthestOff)} beyond the table's edge.",
            $"{course.Count - on.Length} of {course.Count} points cannot be shown.",
            on.Length < FewestPoints
                ? Shorter(plan, demonstration)
                : new Mend($"Let '{demonstration.Name}' end at {mend}.", $"demonstrations.{demonstration.Name}.to", mend));
    }

    /// <summary>As many times as far at its end as at its beginning, and all of it on the table.</summary>
    private static Mend Shorter(BenchPlan plan, DistanceDemonstration demonstration)
    {
        double reach = Reach(plan, demonstration.To), begin = Math.Floor(100.0 * reach * demonstration.From / demonstration.To) / 100.0;
        string from = InWords.Length(begin), to = InWords.Length(reach);
        return begin >= Nearest * FreeSpace.Wavelength(plan.Frequency)
            ? Rearranging.Setting(
                $"Let '{demonstration.Name}' run from {from} to {to}, or move the source back to the table's other end.",
                new MendedKey($"demonstrations.{demonstration.Name}.from", from),
                new MendedKey($"demonstrations.{demonstration.Name}.to", to))
            : new Mend("Turn the source along the table, or move it back to the table's other end.");
    }

    /// <summary>How far from the source's mouth the table goes on along its axis, in whole centimetres and no farther than asked [m].</summary>
    private static double Reach(BenchPlan plan, double farthest)
    {
        int centimetres = (int)(100.0 * farthest);
        return Enumerable.Range(0, centimetres + 1).Select(i => i / 100.0)
            .TakeWhile(distance => PlaceFindings.Beyond(plan.Table, Moves.OnAxis(plan.Source, plan.Receiver, distance).Pose.Position) == 0.0)
            .LastOrDefault();
    }
}
