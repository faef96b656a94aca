using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;

namespace Hornbook.Bench.Programmes;

/// <summary>The demonstrations of a bench as a show.</summary>
public static class Show
{
    /// <summary>Those that are shown, in the order of the show.</summary>
    public static IReadOnlyList<Demonstration> Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. plan.Demonstrations.Select((shown, i) => (Shown: shown, Place: shown.Showing.Place ?? i + 1, Turn: i))
                .Where(item => !item.Shown.Showing.IsAside).OrderBy(item => item.Place).ThenBy(item => item.Turn).Select(item => item.Shown)
        ];
    }

    /// <summary>How long it takes [s].</summary>
    public static double Duration(BenchPlan plan) => Of(plan).Sum(shown => shown.Showing.Duration);

    /// <summary>What the presenter changes before each demonstration when everything stands as in the bench file, in the order of the show.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Changes(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<IReadOnlyList<string>> changes = [];
        BenchPlan before = plan;
        foreach (Demonstration shown in Of(plan))
        {
            IReadOnlyList<Setting> course = shown.Course(plan);
            changes.Add(Preparation.Between(before, plan, course[0]));
            before = Preparation.AfterShowing(plan, course[^1]);
        }

        return changes;
    }
}
