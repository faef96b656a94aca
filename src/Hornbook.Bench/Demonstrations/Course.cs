using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The course of a demonstration: what is set, point by point. Geometry only; nothing is computed of waves.</summary>
public static class Course
{
    /// <summary>What is changed along a demonstration.</summary>
    public static Abscissa AbscissaOf(Demonstration demonstration) => demonstration switch
    {
        BeamWidthDemonstration => Abscissa.Turn,
        AntennaChangeDemonstration => Abscissa.Antenna,
        DistanceDemonstration => Abscissa.Distance,
        PolarisationDemonstration => Abscissa.Roll,
        _ => throw Unknown(demonstration),
    };

    /// <summary>The settings in the order shown.</summary>
    /// <param name="plan">The bench as it stands.</param>
    /// <param name="demonstration">What is moved or changed.</param>
    public static IReadOnlyList<Setting> Of(BenchPlan plan, Demonstration demonstration)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return demonstration switch
        {
            BeamWidthDemonstration d => [.. Evenly(d.From, d.To, d.Points).Select(angle => Turned(plan, d.Turned, angle))],
            AntennaChangeDemonstration d => [.. d.Antennas.Select((name, i) => Changed(plan, d.Changed, name, i + 1))],
            DistanceDemonstration d => [.. Evenly(d.From, d.To, d.Points).Select(distance => Moved(plan, distance))],
            PolarisationDemonstration d => [.. Evenly(d.From, d.To, d.Points).Select(angle => Rolled(plan, angle))],
            _ => throw Unknown(demonstration),
        };
    }

    /// <summary>The receiver on the source's axis, its mouth at a distance from the source's.</summary>
    /// <param name="source">The sending end.</param>
    /// <param name="receiver">The receiving end, whose direction is kept.</param>
    /// <param name="distance">Mouth to mouth [m].</param>
    public static ReceiverEnd OnAxis(SourceEnd source, ReceiverEnd receiver, double distance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return receiver with { Pose = receiver.Pose with { Position = source.Pose.ToBench(new Vector(distance, 0.0, 0.0)) } };
    }

    private static Setting Turned(BenchPlan plan, BenchEnd end, double angle) => end == BenchEnd.Source
        ? new(angle, string.Empty, plan.Source with { Pose = Turn(plan.Source.Pose, angle) }, plan.Receiver, plan.Panels)
        : new(angle, string.Empty, plan.Source, plan.Receiver with { Pose = Turn(plan.Receiver.Pose, angle) }, plan.Panels);

    private static Setting Changed(BenchPlan plan, BenchEnd end, string antenna, int order) => end == BenchEnd.Source
        ? new(order, antenna, plan.Source with { Antenna = antenna }, plan.Receiver, plan.Panels)
        : new(order, antenna, plan.Source, plan.Receiver with { Antenna = antenna }, plan.Panels);

    private static Setting Moved(BenchPlan plan, double distance) =>
        new(distance, string.Empty, plan.Source, OnAxis(plan.Source, plan.Receiver, distance), plan.Panels);

    private static Setting Rolled(BenchPlan plan, double angle)
    {
        Pose pose = plan.Receiver.Pose;
        return new(angle, string.Empty, plan.Source, plan.Receiver with { Pose = pose with { Roll = pose.Roll + angle } }, plan.Panels);
    }

    private static Pose Turn(Pose pose, double angle) => pose with { Turn = pose.Turn + angle };

    private static IEnumerable<double> Evenly(double from, double to, int points) =>
        Enumerable.Range(0, points).Select(i => from + ((to - from) * i / (points - 1)));

    private static ArgumentException Unknown(Demonstration demonstration) =>
        new($"no course is known for {demonstration?.GetType().Name ?? "nothing"}", nameof(demonstration));
}
