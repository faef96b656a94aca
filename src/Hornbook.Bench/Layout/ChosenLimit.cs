using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Layout;

/// <summary>The exposure limit that a bench chooses.</summary>
public static class ChosenLimit
{
    /// <summary>The limit by its identifier, or the strictest for the public; null where it does not hold at the bench's frequency.</summary>
    public static ExposureLimit? Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ExposureLimit? chosen = plan.ExposureLimit == "strictest"
            ? ExposureLimits.Strictest(ExposureGroup.Public, plan.Frequency)
            : ExposureLimits.Find(plan.ExposureLimit);
        return chosen is not null && chosen.Band.Contains(plan.Frequency) ? chosen : null;
    }
}
