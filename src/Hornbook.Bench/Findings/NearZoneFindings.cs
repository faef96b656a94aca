using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Findings;

/// <summary>Whether the ends stand in each other's far zone, and how much the standing waves between them are felt.</summary>
internal static class NearZoneFindings
{
    /// <summary>Errors of the far-zone formulas up to this are lost among those of a table-top bench [dB].</summary>
    private const double FeltDb = 0.5;

    /// <summary>Half width of the standing-wave band from which it is worth a word [dB]: in volts, 7 % at a square law.</summary>
    private const double RippleFeltDb = 0.3;

    internal static IEnumerable<Finding> Of(Inspection bench) => [.. NearZone(bench), .. Ripple(bench)];

    private static IEnumerable<Finding> NearZone(Inspection bench)
    {
        if (bench.Textbook.Distance >= bench.Textbook.FarZone)
        {
            yield break;
        }

        TextbookComparison textbook = FaceToFace(bench);

        string whose = textbook.SourceFarZone >= textbook.ReceiverFarZone ? "source" : "receiver";
        bool felt = Math.Abs(textbook.FriisErrorDb) > FeltDb;
        yield return new Finding(felt ? Severity.Weakens : Severity.Note, "near-zone",
            $"The ends are {InWords.Length(textbook.Distance)} apart, inside 2D²/λ = {InWords.Length(textbook.FarZone)} of the {whose}'s antenna.",
            $"Far-zone formulas are wrong here: Friis would promise {InWords.Decibels(Math.Abs(textbook.FriisErrorDb))} too {(textbook.FriisErrorDb > 0.0 ? "much" : "little")}. The prediction itself counts the near zone.",
            Farther(bench, textbook.FarZone));
    }

    private static Mend Farther(Inspection bench, double farZone)
    {
        const string Ending = ", or use a smaller antenna.";
        return Rearranging.Farther(
            bench,
            moved => (moved.Receiver.Pose.Position - moved.Source.Pose.Position).Length >= farZone,
            Ending,
            $"Move the receiver to {InWords.Length(Math.Ceiling(20.0 * farZone) / 20.0)} from the source's mouth{Ending}");
    }

    /// <summary>The formulas beside the link of both ends well aimed: a bad aim is another finding.</summary>
    private static TextbookComparison FaceToFace(Inspection bench)
    {
        (Pose sending, Pose receiving) = Aim.Best(bench.Source.Pose, bench.Receiver.Pose);
        SourceEnd source = bench.Source with { Pose = sending };
        ReceiverEnd receiver = bench.Receiver with { Pose = receiving };
        return TextbookLink.TiedTo(bench.Scene, source, receiver).Beside(source, receiver, bench.Scene.Read(source, receiver).Link);
    }

    private static IEnumerable<Finding> Ripple(Inspection bench)
    {
        if (bench.Reading.RippleDb > RippleFeltDb)
        {
            yield return new Finding(Severity.Note, "standing-waves",
                $"Standing waves between the mouths move the reading by ±{InWords.Decibels(bench.Reading.RippleDb)}.",
                $"Each quarter wavelength ({InWords.Length(bench.Wavelength / 4.0)}) of distance takes the tone from one end of that band to the other.",
                Calmer(bench));
        }
    }

    private static Mend Calmer(Inspection bench)
    {
        string twice = $"read twice, {InWords.Length(bench.Wavelength / 4.0)} apart, and take the mean";
        return Rearranging.Farther(
            bench,
            moved => bench.Scene.Read(moved.Source, moved.Receiver).RippleDb <= RippleFeltDb,
            $", or {twice}.",
            $"{char.ToUpperInvariant(twice[0])}{twice[1..]}.");
    }
}
