using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Guides;

namespace Hornbook.Bench.Findings;

/// <summary>What a demonstrator should know of a bench before the show.</summary>
public static class BenchFindings
{
    /// <summary>Mouths nearer than this stand in one place [m].</summary>
    private const double SamePlace = 1e-3;

    /// <summary>Looks a bench over; one that cannot be computed as a whole gives findings too, never an exception.</summary>
    /// <param name="plan">The bench.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-].</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <returns>Worst first; of equal severity, in the order in which one would set the bench up.</returns>
    public static IReadOnlyList<Finding> Of(BenchPlan plan, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        BenchPlan computable = Computable(plan);
        bool hasBothEnds = IsAtHand(computable, plan.Source.Antenna) && IsAtHand(computable, plan.Receiver.Antenna);
        return Sorted([.. OfPlan(plan), .. hasBothEnds ? OfScene(Scene.Of(computable), progress, cancellation) : []]);
    }

    /// <summary>Looks over a bench that is made ready already.</summary>
    /// <param name="scene">The bench made ready.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-].</param>
    /// <param name="cancellation">Stops the computing.</param>
    /// <returns>Worst first, as above.</returns>
    public static IReadOnlyList<Finding> Of(Scene scene, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return Sorted([.. OfPlan(scene.Plan), .. OfScene(scene, progress, cancellation)]);
    }

    private static IEnumerable<Finding> OfPlan(BenchPlan plan) =>
        [.. GuideFindings.Of(plan), .. PlaceFindings.Of(plan), .. PanelFindings.Of(plan), .. GridFindings.Of(plan), .. CourseFindings.Of(plan)];

    private static IEnumerable<Finding> OfScene(Scene scene, IProgress<double>? progress, CancellationToken cancellation)
    {
        if ((scene.Plan.Source.Pose.Position - scene.Plan.Receiver.Pose.Position).Length < SamePlace)
        {
            return []; // There is no link to speak of; that the mouths touch is found from the plan.
        }

        Inspection inspection = Inspection.Of(scene, progress, cancellation);
        return
        [
            .. AimFindings.Of(inspection),
            .. NearZoneFindings.Of(inspection),
            .. BounceFindings.Of(inspection),
            .. ToneFindings.Of(inspection),
            .. DemonstrationFindings.Of(inspection),
            .. ExposureFindings.Of(inspection),
            .. EmissionFindings.Of(inspection),
        ];
    }

    /// <summary>The bench without antennas whose guide carries nothing, and without the demonstrations that need them.</summary>
    private static BenchPlan Computable(BenchPlan plan)
    {
        BenchPlan left = plan with
        {
            Antennas = [.. plan.Antennas.Where(a => GuideWave.At(a.Shape.Guide, plan.Frequency).Travels)],
        };
        return left with
        {
            Demonstrations = [.. plan.Demonstrations.Where(d => d is not AntennaChangeDemonstration change || change.Antennas.All(a => IsAtHand(left, a)))],
        };
    }

    private static bool IsAtHand(BenchPlan plan, string antenna) => plan.Antennas.Any(a => a.Name == antenna);

    private static IReadOnlyList<Finding> Sorted(IEnumerable<Finding> found) => [.. found.OrderBy(f => f.Severity)];
}
