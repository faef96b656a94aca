using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Programmes;

/// <summary>What a presenter changes from one state of the bench to the next, in words.</summary>
internal static class Preparation
{
    private const double SamePlace = 1e-3;
    private const double SameAngle = 2e-3;

    /// <summary>One sentence for each change.</summary>
    /// <param name="before">How everything stood.</param>
    /// <param name="bench">How it is to be set.</param>
    /// <param name="start">The first setting of the demonstration.</param>
    internal static IReadOnlyList<string> Between(BenchPlan before, BenchPlan bench, Setting start) =>
    [
        .. Ends("source", before.Source.Antenna, before.Source.Pose, start.Source.Antenna, start.Source.Pose),
        .. Ends("receiver", before.Receiver.Antenna, before.Receiver.Pose, start.Receiver.Antenna, start.Receiver.Pose),
        .. before.Panels.Zip(start.Panels).SelectMany(pair => Panels(pair.First, pair.Second)),
        .. before.Detection.Amplifier.Gain == bench.Detection.Amplifier.Gain
            ? Array.Empty<string>()
            : [$"Set the amplifier's gain to {InWords.Rounded(bench.Detection.Amplifier.Gain, 3)}."],
    ];

    /// <summary>The bench as the last setting of a demonstration leaves it.</summary>
    internal static BenchPlan AfterShowing(BenchPlan bench, Setting last) => bench with { Source = last.Source, Receiver = last.Receiver, Panels = last.Panels };

    private static IEnumerable<string> Ends(string end, string antennaBefore, Pose before, string antenna, Pose now)
    {
        if (antennaBefore != antenna)
        {
            yield return $"Put the antenna '{antenna}' on the {end}.";
        }

        if (!Same(before, now))
        {
            yield return $"Set the {end} to {Place(now)}.";
        }
    }

    private static IEnumerable<string> Panels(BenchPanel before, BenchPanel now)
    {
        if (before.Stands && !now.Stands)
        {
            yield return $"Take '{now.Name}' away.";
        }
        else if (now.Stands && (!before.Stands || !Same(before.Pose, now.Pose)))
        {
            yield return $"{(before.Stands ? "Set" : "Put in")} '{now.Name}' at {Place(now.Pose)}.";
        }
    }

    private static bool Same(Pose a, Pose b) => (a.Position - b.Position).Length < SamePlace
        && Same(a.Turn, b.Turn) && Same(a.Tilt, b.Tilt) && Same(a.Roll, b.Roll);

    private static bool Same(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 2.0 * Math.PI)) < SameAngle;

    private static string Place(Pose pose)
    {
        List<string> parts =
        [
            $"x = {InWords.Length(pose.Position.X)}", $"y = {InWords.Length(pose.Position.Y)}", $"z = {InWords.Length(pose.Position.Z)}",
        ];
        foreach ((string name, double angle) in new[] { ("turned", pose.Turn), ("tilted", pose.Tilt), ("rolled", pose.Roll) })
        {
            double within = Math.IEEERemainder(angle, 2.0 * Math.PI);
            if (Math.Abs(within) > SameAngle)
            {
                parts.Add($"{name} {InWords.Angle(within)}");
            }
        }

        return string.Join(", ", parts);
    }
}
