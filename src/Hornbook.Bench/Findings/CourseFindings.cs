using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the demonstrations stay on the table.</summary>
internal static class CourseFindings
{
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
            on.Length == 0
                ? new Mend("Turn the source along the table, or move it back to the table's other end.")
                : new Mend($"Let '{demonstration.Name}' end at {mend}.", $"demonstrations.{demonstration.Name}.to", mend));
    }
}
