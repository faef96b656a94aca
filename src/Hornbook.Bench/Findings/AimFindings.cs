using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the two ends look at each other and agree in polarisation.</summary>
internal static class AimFindings
{
    /// <summary>Loss from which a bench is weaker than it need be [dB].</summary>
    private const double FeltDb = 1.0;

    /// <summary>Loss from which there is hardly anything left to show [dB].</summary>
    private const double LostDb = 10.0;

    /// <summary>Half a degree: nobody sets an end finer by eye [rad].</summary>
    private const double SeenAngle = 0.5 * Math.PI / 180.0;

    internal static IEnumerable<Finding> Of(Inspection bench) => [.. Facing(bench), .. Polarisation(bench), .. Trust(bench)];

    private static IEnumerable<Finding> Facing(Inspection bench)
    {
        Pose source = Aim.At(bench.Source.Pose, bench.Receiver.Pose.Position);
        Pose receiver = Aim.At(bench.Receiver.Pose, bench.Source.Pose.Position);
        double lossDb = LossDb(bench, source, receiver);
        if (lossDb < FeltDb)
        {
            yield break;
        }

        double sourceOff = Between(bench.Source.Pose, source);
        double receiverOff = Between(bench.Receiver.Pose, receiver);
        (string end, Pose from, Pose to) = sourceOff > receiverOff
            ? ("source", bench.Source.Pose, source)
            : ("receiver", bench.Receiver.Pose, receiver);
        yield return new Finding(Grade(lossDb), "not-facing",
            $"Source and receiver do not look at each other: they are {InWords.Angle(sourceOff)} and {InWords.Angle(receiverOff)} off.",
            $"{InWords.Decibels(lossDb)} less is received than if they did.",
            Turn(bench, end, from, to));
    }

    private static IEnumerable<Finding> Polarisation(Inspection bench)
    {
        double roll = Aim.AlignedRoll(bench.Source.Pose, bench.Receiver.Pose);
        double lossDb = LossDb(bench, bench.Source.Pose, bench.Receiver.Pose with { Roll = roll });
        if (lossDb < FeltDb)
        {
            yield break;
        }

        yield return new Finding(Grade(lossDb), "polarisation-crossed",
            $"The receiver is rolled {InWords.Angle(Math.Abs(Math.IEEERemainder(bench.Receiver.Pose.Roll - roll, Math.PI)))} against the source's polarisation.",
            $"{InWords.Decibels(lossDb)} less is received than with both alike.",
            new Mend($"Roll the receiver to {InWords.Angle(roll)}.", "receiver.roll", InWords.Typed(InWords.Angle(roll))));
    }

    private static IEnumerable<Finding> Trust(Inspection bench)
    {
        if (bench.Reading.Trust.Level == TrustLevel.Outside)
        {
            yield return new Finding(Severity.Weakens, "not-trusted",
                "The prediction of the bench as it stands is a guide only.", bench.Reading.Trust.Why,
                FaceEachOther(bench));
        }
    }

    private static Mend FaceEachOther(Inspection bench)
    {
        Pose source = Aim.At(bench.Source.Pose, bench.Receiver.Pose.Position), receiver = Aim.At(bench.Receiver.Pose, bench.Source.Pose.Position);
        bool helps = bench.Scene.Read(bench.Source with { Pose = source }, bench.Receiver with { Pose = receiver }).Trust.Level != TrustLevel.Outside
            && ExposureFindings.KeepsEdges(bench, bench.Source with { Pose = source });
        return helps
            ? Rearranging.Setting("Turn both ends to face each other, or believe the bench rather than the prediction.",
                [Angle("source.turn", source.Turn), Angle("source.tilt", source.Tilt), Angle("receiver.turn", receiver.Turn), Angle("receiver.tilt", receiver.Tilt)])
            : new Mend("Believe the bench rather than the prediction.");

        static MendedKey Angle(string key, double angle) => new(key, InWords.Typed(InWords.Angle(angle)));
    }

    private static double LossDb(Inspection bench, Pose source, Pose receiver) => Decibels.FromRatio(
        bench.Scene.Read(bench.Source with { Pose = source }, bench.Receiver with { Pose = receiver }).Link
        / Math.Max(bench.Reading.Link, double.Epsilon));

    private static Severity Grade(double lossDb) => lossDb > LostDb ? Severity.Spoils : Severity.Weakens;

    private static double Between(Pose a, Pose b) => Math.Acos(Math.Clamp(Vector.Dot(a.Forward, b.Forward), -1.0, 1.0));

    /// <summary>Turn and tilt set right, whichever is off; words only where that would turn the beam on people at an edge.</summary>
    private static Mend Turn(Inspection bench, string end, Pose now, Pose to)
    {
        (string Key, double Angle, double Off)[] off =
        [
            ("turn", to.Turn, Math.IEEERemainder(to.Turn - now.Turn, 2.0 * Math.PI)),
            ("tilt", to.Tilt, to.Tilt - now.Tilt),
        ];
        (string Key, double Angle, double Off)[] needed = [.. off.Where(one => Math.Abs(one.Off) > SeenAngle).DefaultIfEmpty(off[0])];
        string words = string.Join(" and ", needed.Select((one, i) => $"{one.Key} {(i == 0 ? $"the {end}" : "it")} to {InWords.Angle(one.Angle)}"));
        string move = $"{char.ToUpperInvariant(words[0])}{words[1..]}";
        return end == "source" && !ExposureFindings.KeepsEdges(bench, bench.Source with { Pose = to })
            ? new Mend($"{move}, once nobody stands where it then looks.")
            : Rearranging.Setting($"{move}.", [.. needed.Select(one => new MendedKey($"{end}.{one.Key}", InWords.Typed(InWords.Angle(one.Angle))))]);
    }
}
