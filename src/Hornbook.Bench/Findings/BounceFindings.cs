using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the table top sends a second wave to the receiver.</summary>
/// <remarks>
/// Where the bench does not say what its top is made of, the table is not part of the prediction. What it could do at most is found by images: a table top that returned everything would
/// send what a source mirrored in it sends, so the link from the mirrored source, near zone and patterns included, bounds the bounce.
/// </remarks>
internal static class BounceFindings
{
    private const double FeltDb = 1.0;
    private const double HighestAxis = 1.0;
    private const double Step = 0.05;

    internal static IEnumerable<Finding> Of(Inspection bench)
    {
        if (bench.Plan.Table.Panel is not null)
        {
            yield break; // The prediction has it.
        }

        (SourceEnd source, ReceiverEnd receiver) = (bench.Source, bench.Receiver);
        double clearance = Clearance(source, receiver);
        double radius = FresnelRadius(bench);
        double metalDb = SwingDb(Bounce(bench, 0.0));
        double woodDb = SwingDb(Bounce(bench, 0.0) * TableReflection.OfWood(source.Pose, receiver.Pose));
        if (clearance >= radius && metalDb <= FeltDb)
        {
            yield break;
        }

        string zone = clearance < radius
            ? $"the first Fresnel zone ({InWords.Length(radius)} about the line of sight) is cut by the table, {InWords.Length(clearance)} below"
            : $"the beams are broad enough to light the table, {InWords.Length(clearance)} below the line of sight";
        yield return new Finding(woodDb > FeltDb ? Severity.Weakens : Severity.Note, "table-bounce",
            $"The table top sends a second wave to the receiver: {zone}.",
            $"A wooden table might move the reading by up to ±{InWords.Decibels(woodDb)}, a metal one by ±{InWords.Decibels(metalDb)}; the prediction leaves it out.",
            Mend(bench));
    }

    /// <summary>First Fresnel zone in the middle of the path, r₁ = √(λ d₁ d₂/(d₁+d₂)) with d₁ = d₂ [m].</summary>
    private static double FresnelRadius(Inspection bench) => 0.5 * Math.Sqrt(bench.Wavelength * bench.Distance);

    private static double Clearance(SourceEnd source, ReceiverEnd receiver) =>
        0.5 * (source.Pose.Position.Z + receiver.Pose.Position.Z);

    private static double SwingDb(double bounce) => 2.0 * Decibels.FromRatio(1.0 + bounce);

    /// <summary>The wave by way of a perfectly reflecting table over the direct one, with both ends lifted by a height [-].</summary>
    private static double Bounce(Inspection bench, double lift)
    {
        SourceEnd source = bench.Source with { Pose = Lifted(bench.Source.Pose, lift) };
        ReceiverEnd receiver = bench.Receiver with { Pose = Lifted(bench.Receiver.Pose, lift) };
        double bounced = bench.Scene.LinkAmplitude(source with { Pose = Mirrored(source.Pose) }, receiver).Magnitude;
        double direct = bench.Scene.LinkAmplitude(source, receiver).Magnitude;
        return bounced / Math.Max(direct, double.Epsilon);
    }

    private static Mend Mend(Inspection bench)
    {
        double highest = Math.Max(bench.Source.Pose.Position.Z, bench.Receiver.Pose.Position.Z);
        double needed = FresnelRadius(bench) + highest - Clearance(bench.Source, bench.Receiver);
        for (double height = Math.Ceiling(Math.Max(needed, highest) / Step) * Step; height <= HighestAxis; height += Step)
        {
            if (SwingDb(Bounce(bench, height - highest)) <= FeltDb)
            {
                return new Mend($"Raise both axes to {InWords.Length(height)}.");
            }
        }

        return new Mend("Lay an absorber on the table half way between the ends, or use narrower beams.");
    }

    private static Pose Lifted(Pose pose, double lift) => pose with { Position = pose.Position + new Vector(0.0, 0.0, lift) };

    /// <summary>The image in the table top: antennas are symmetric about their own planes, so mirroring reverses tilt and roll only.</summary>
    private static Pose Mirrored(Pose pose) => new(
        new Vector(pose.Position.X, pose.Position.Y, -pose.Position.Z), pose.Turn, -pose.Tilt, -pose.Roll);
}
