using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the table top sends a second wave to the receiver.</summary>
/// <remarks>
/// A table whose make-up the file does not state is not part of the prediction. What it could do at most is found by images: a table top that
/// returned everything would send what a source mirrored in it sends, so the link from the mirrored source, near zone and patterns included, bounds the bounce.
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

        TableBounce bounce = Lifted(bench, 0.0);
        if (bounce.Clearance >= bounce.FresnelRadius && bounce.MetalDb <= FeltDb)
        {
            yield break;
        }

        string zone = bounce.Clearance < bounce.FresnelRadius
            ? $"the first Fresnel zone ({InWords.Length(bounce.FresnelRadius)} about the line of sight) is cut by the table, {InWords.Length(bounce.Clearance)} below"
            : $"the beams are broad enough to light the table, {InWords.Length(bounce.Clearance)} below the line of sight";
        yield return new Finding(bounce.WoodDb > FeltDb ? Severity.Weakens : Severity.Note, "table-bounce",
            $"The table top sends a second wave to the receiver: {zone}.",
            $"A wooden table might move the reading by up to ±{InWords.Decibels(bounce.WoodDb)}, a metal one by ±{InWords.Decibels(bounce.MetalDb)}; the prediction leaves it out.",
            Mend(bench, bounce));
    }

    private static Mend Mend(Inspection bench, TableBounce bounce)
    {
        double highest = Math.Max(bench.Source.Pose.Position.Z, bench.Receiver.Pose.Position.Z);
        double needed = bounce.FresnelRadius + highest - bounce.Clearance;
        for (double height = Math.Ceiling(Math.Max(needed, highest) / Step) * Step; height <= HighestAxis; height += Step)
        {
            if (Lifted(bench, height - highest).MetalDb <= FeltDb)
            {
                string move = $"Raise both axes to {InWords.Length(height)}{(bench.Plan.Panels.Any(panel => panel.Stands) ? ", and the panels by as much" : string.Empty)}.";
                return Rearranging.Everything(bench.Plan, new Vector(0.0, 0.0, height - highest)) is { } moved ? Rearranging.AsIn(moved, move) : new Mend(move);
            }
        }

        return new Mend("Lay an absorber on the table half way between the ends, or use narrower beams.");
    }

    /// <summary>The bounce with both ends lifted by a height.</summary>
    private static TableBounce Lifted(Inspection bench, double lift) => TableBounce.Of(
        bench.Scene,
        bench.Source with { Pose = Lifted(bench.Source.Pose, lift) },
        bench.Receiver with { Pose = Lifted(bench.Receiver.Pose, lift) });

    private static Pose Lifted(Pose pose, double lift) => pose with { Position = pose.Position + new Vector(0.0, 0.0, lift) };
}
