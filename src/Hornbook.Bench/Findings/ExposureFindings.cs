using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Findings;

/// <summary>Whether anybody would stand or reach closer to the source than the chosen limit allows.</summary>
/// <remarks>
/// The audience is assumed to stand at every edge of the table, with its eyes at the height of the source's axis there; whoever
/// moves the receiver by hand reaches to where it stands. The power is the worst that the source can give.
/// </remarks>
internal static class ExposureFindings
{
    private const string Strictest = "strictest";

    /// <summary>So many settings of a sweep are looked at: five degrees apart over a third of a turn.</summary>
    private const int MostSettings = 25;

    internal static IEnumerable<Finding> Of(Inspection bench)
    {
        (ExposureLimit? chosen, ExposureLimit? limit) = Limits(bench);
        return
        [
            .. WorstCase(bench),
            .. (chosen is not null && chosen == limit) || bench.Plan.ExposureLimit == Strictest ? [] : Unfit(bench, chosen),
            .. limit is null ? Unknown(bench) : Inside(bench, limit),
        ];
    }

    /// <summary>Whether the edges of the table get no more than the limit allows from the source in another place, or no more than they get now.</summary>
    internal static bool KeepsEdges(Inspection bench, SourceEnd moved) =>
        EdgeAt(bench, moved).Density <= Math.Max(EdgeAt(bench, bench.Source).Density, Allowed(bench));

    /// <summary>The same for all that a demonstration does with the source, if it is changed into another one.</summary>
    internal static bool KeepsEdges(Inspection bench, Demonstration now, Demonstration changed) =>
        SweptOver(bench, changed).Density <= Math.Max(SweptOver(bench, now).Density, Allowed(bench));

    /// <summary>The limit that the file names, null where there is none such; and the one that is held to, null where none is known.</summary>
    private static (ExposureLimit? Chosen, ExposureLimit? HeldTo) Limits(Inspection bench)
    {
        double frequency = bench.Plan.Frequency;
        ExposureLimit? chosen = bench.Plan.ExposureLimit == Strictest ? null : ExposureLimits.Find(bench.Plan.ExposureLimit);
        return (chosen, chosen is not null && chosen.Band.Contains(frequency) ? chosen : ExposureLimits.Strictest(ExposureGroup.Public, frequency));
    }

    // Without a limit nothing more is allowed than is there already.
    private static double Allowed(Inspection bench) => Limits(bench).HeldTo?.PowerDensity(bench.Plan.Frequency) ?? 0.0;

    private static IEnumerable<Finding> WorstCase(Inspection bench) => bench.Source.IsWorstCaseStated
        ? []
        : [new(Severity.Weakens, "worst-case-not-stated",
            $"The most that the source can give is not stated; its power of {InWords.Power(bench.Source.Power)} is taken for it.",
            "Exposure and keep-out distances may come out too small: oscillators often give more than they are set to.",
            new Mend("State the worst case from the source's data sheet.", "source.worst_case_power"))];

    private static IEnumerable<Finding> Unfit(Inspection bench, ExposureLimit? chosen) => [new(Severity.Weakens, "exposure-limit-unfit",
        chosen is null
            ? $"No exposure limit is called '{bench.Plan.ExposureLimit}'."
            : $"The exposure limit '{chosen.Id}' is for {InWords.Frequency(chosen.Band.Lowest)} to {InWords.Frequency(chosen.Band.Highest)}, not {InWords.Frequency(bench.Plan.Frequency)}.",
        "The strictest one for the public is taken instead.",
        new Mend("Choose the strictest limit, or one for this frequency.", "exposure.limit", Strictest))];

    private static IEnumerable<Finding> Unknown(Inspection bench) => [new(Severity.Weakens, "exposure-limit-unknown",
        $"No exposure limit is known here for {InWords.Frequency(bench.Plan.Frequency)}.",
        "No keep-out distance can be given.",
        new Mend("Look up the limit that holds where you show the bench."))];

    private static IEnumerable<Finding> Inside(Inspection bench, ExposureLimit limit)
    {
        ExposureField field = ExposureField.Of(bench.Scene.Source, bench.Source.WorstCasePower);
        double allowed = limit.PowerDensity(bench.Plan.Frequency);
        return
        [
            .. Edge(bench, field, limit, allowed),
            .. bench.Plan.Demonstrations.SelectMany(d => Swept(bench, d, limit, allowed)),
            .. Receiver(bench, field, limit, allowed),
        ];
    }

    private static IEnumerable<Finding> Edge(Inspection bench, ExposureField field, ExposureLimit limit, double allowed)
    {
        TableEdge worst = EdgeAt(bench, bench.Source);
        if (worst.Density <= allowed)
        {
            yield break;
        }

        double power = InWords.TwoDigitsDown(bench.Source.WorstCasePower * allowed / worst.Density);
        yield return new Finding(Severity.Spoils, "edge-inside-keep-out",
            $"At {InWords.Power(bench.Source.WorstCasePower)} the table's edge {InWords.Length(worst.Distance)} from the source's mouth gets {Density(worst.Density)}; the limit '{limit.Title}' is {Density(allowed)}.",
            $"Whoever stands there is inside the keep-out distance, {InWords.Length(KeepOut.OnAxis(field, allowed))} on the axis. People are assumed to stand at every edge.",
            Weaker(bench.Source, InWords.Power(power), power));
    }

    /// <summary>A worst case below what the source gives is none: then both come down.</summary>
    private static Mend Weaker(SourceEnd source, string text, double power) => power >= source.Power
        ? new Mend($"Keep people farther from the source than that, or bring its worst case down to {text}.", "source.worst_case_power", text)
        : Rearranging.Setting(
            $"Keep people farther from the source than that, or bring its power and its worst case down to {text}.",
            new MendedKey("source.worst_case_power", text),
            new MendedKey("source.power", text));

    /// <summary>Demonstrations that turn the source, or change its antenna: for a moment others are in the beam.</summary>
    private static IEnumerable<Finding> Swept(Inspection bench, Demonstration demonstration, ExposureLimit limit, double allowed)
    {
        TableEdge worst = SweptOver(bench, demonstration);
        if (worst.Density <= allowed)
        {
            yield break;
        }

        yield return new Finding(worst.Density > WorkersLimit(bench, allowed) ? Severity.Spoils : Severity.Weakens, "edge-swept",
            $"In '{demonstration.Name}' the beam sweeps over the table's edge {InWords.Length(worst.Distance)} from the source's mouth with {Density(worst.Density)}; the limit '{limit.Title}' is {Density(allowed)}.",
            "Whoever stands there is in the beam for a moment; most limits are means over minutes, so this is a precaution.",
            WithTheReceiver(bench, demonstration));
    }

    /// <summary>The place at an edge that gets most while a demonstration turns the source or changes its antenna.</summary>
    private static TableEdge SweptOver(Inspection bench, Demonstration demonstration)
    {
        Setting[] moved = [.. demonstration.Course(bench.Plan).Where(s => s.Source != bench.Source)];
        int stride = Math.Max(1, moved.Length / MostSettings);
        return moved.Where((_, i) => i % stride == 0).Select(s => EdgeAt(bench, s.Source)).DefaultIfEmpty().MaxBy(edge => edge.Density);
    }

    /// <summary>The same shown with the other end, where that is as good: a beam is as wide and a gain as large whichever way the wave goes.</summary>
    private static Mend WithTheReceiver(Inspection bench, Demonstration demonstration)
    {
        const string Aside = "let nobody stand beside the source's half of the table.";
        string key = $"demonstrations.{demonstration.Name}.end";
        return demonstration switch
        {
            BeamWidthDemonstration { Turned: BenchEnd.Source } => new Mend($"Turn the receiver instead of the source, or {Aside}", key, "receiver"),
            AntennaChangeDemonstration { Changed: BenchEnd.Source } change when !Clips(bench, change with { Changed = BenchEnd.Receiver }) =>
                new Mend($"Change the receiver's antenna instead of the source's, or {Aside}", key, "receiver"),
            _ => new Mend($"{char.ToUpperInvariant(Aside[0])}{Aside[1..]}"),
        };
    }

    private static bool Clips(Inspection bench, Demonstration changed) =>
        ChainSetting.IsAtCeiling(bench.Plan.Detection, bench.Predict(changed).Curve.Strongest.Reading.Heard);

    private static TableEdge EdgeAt(Inspection bench, SourceEnd source) =>
        TableEdge.Worst(bench.Plan.Table, source.Pose, ExposureField.Of(bench.Scene.Antenna(source.Antenna), source.WorstCasePower));

    private static double WorkersLimit(Inspection bench, double otherwise) =>
        ExposureLimits.Strictest(ExposureGroup.Workers, bench.Plan.Frequency)?.PowerDensity(bench.Plan.Frequency) ?? otherwise;

    private static IEnumerable<Finding> Receiver(Inspection bench, ExposureField field, ExposureLimit limit, double allowed)
    {
        double density = TableEdge.DensityAt(field, bench.Source.Pose.ToOwn(bench.Receiver.Pose.Position));
        if (density <= allowed)
        {
            yield break;
        }

        yield return new Finding(density > WorkersLimit(bench, allowed) ? Severity.Weakens : Severity.Note, "receiver-inside-keep-out",
            $"The receiver stands inside the keep-out distance: {Density(density)} at its place; the limit '{limit.Title}' is {Density(allowed)}.",
            $"A hand that moves or turns it reaches inside; the keep-out distance is {InWords.Length(KeepOut.OnAxis(field, allowed))} on the axis.",
            Rearranging.Farther(
                bench,
                moved => TableEdge.DensityAt(field, moved.Source.Pose.ToOwn(moved.Receiver.Pose.Position)) <= allowed,
                "; or turn the source off, or away, before reaching in.",
                "Turn the source off, or away, before reaching in; or turn the receiver from behind with a rod."));
    }

    private static string Density(double density) => $"{InWords.Rounded(density, 2)} W/m²";
}
