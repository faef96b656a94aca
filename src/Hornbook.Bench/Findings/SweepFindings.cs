using Hornbook.Bench.Demonstrations;

namespace Hornbook.Bench.Findings;

/// <summary>Whether what a demonstration shows is what it claims to show.</summary>
internal static class SweepFindings
{
    /// <summary>Departure of the exponent from 2 that a class would ask about [-].</summary>
    private const double BentExponent = 0.15;

    /// <summary>Error of a gain that a class would ask about [dB].</summary>
    private const double GainErrorDb = 1.0;

    /// <summary>Depth from which a polarisation null counts as one [dB].</summary>
    private const double NullDb = 15.0;

    internal static IEnumerable<Finding> Of(Inspection bench, Prediction prediction) => prediction.Evaluation switch
    {
        BeamWidthEvaluation e when e.HalfPowerWidth is null => [Narrow(prediction, e)],
        DistanceEvaluation e when Math.Abs(e.MouthExponent - 2.0) > BentExponent => [Bent(prediction, e)],
        AntennaChangeEvaluation e when !IsTrue(e) => [Misread(bench, prediction, e)],
        PolarisationEvaluation e when e.DepthDb < NullDb => [Shallow(prediction, e)],
        _ => [],
    };

    private static Finding Narrow(Prediction prediction, BeamWidthEvaluation evaluation)
    {
        string name = prediction.Demonstration.Name;
        Mend mend = evaluation.OwnHalfPowerWidth is double width
            ? Run(name, InWords.Angle(evaluation.PeakAt - width), InWords.Angle(evaluation.PeakAt + width))
            : new Mend("Use an antenna with a narrower beam.");
        return new Finding(Severity.Weakens, "half-power-not-reached",
            $"'{name}' does not reach half power on both sides.", "No beam width can be read off it.", mend);
    }

    private static Finding Bent(Prediction prediction, DistanceEvaluation evaluation) => new(
        Math.Abs(evaluation.MouthExponent - 2.0) > 2.0 * BentExponent ? Severity.Weakens : Severity.Note,
        "distance-law-bent",
        $"In '{prediction.Demonstration.Name}', with distances from mouth to mouth, power falls with the exponent {InWords.Rounded(evaluation.MouthExponent, 3)} instead of 2.",
        $"The inverse-square law seems broken: the waves seem to come from {InWords.Length(Math.Abs(evaluation.InverseSquareOrigin))} {(evaluation.InverseSquareOrigin > 0.0 ? "behind" : "before")} the mouths.",
        evaluation.InverseSquareOrigin > 0.0
            ? new Mend($"Add {InWords.Length(evaluation.InverseSquareOrigin)} to each distance before drawing the curve: it then follows the inverse square.")
            : new Mend($"Begin beyond {InWords.Length(evaluation.Textbook[0].FarZone)}."));

    private static Finding Misread(Inspection bench, Prediction prediction, AntennaChangeEvaluation evaluation)
    {
        AntennaStep worst = evaluation.Steps.MaxBy(s => Math.Abs(s.ErrorDb))!;
        return new Finding(Severity.Weakens, "gain-misread",
            $"In '{prediction.Demonstration.Name}' the change to '{worst.Antenna}' is received as {InWords.Decibels(worst.ReceivedDb)}, though the gains differ by {InWords.Decibels(worst.PromisedDb)}.",
            "At this distance the near zone takes part of the larger antenna's gain.",
            Rearranging.Farther(
                bench,
                moved => Prediction.Of(bench.Scene.With(moved), prediction.Demonstration).Evaluation is AntennaChangeEvaluation e && IsTrue(e),
                distance => $"Move the receiver to {InWords.Length(distance)} from the source's mouth for this demonstration.",
                "Say so, or show the change with antennas that are smaller: the table is too short for these."));
    }

    private static bool IsTrue(AntennaChangeEvaluation evaluation) => evaluation.Steps.All(step => Math.Abs(step.ErrorDb) <= GainErrorDb);

    private static Finding Shallow(Prediction prediction, PolarisationEvaluation evaluation) => new(
        Severity.Weakens,
        "null-not-reached",
        $"'{prediction.Demonstration.Name}' falls by {InWords.Decibels(evaluation.DepthDb)} only.",
        "The audience does not hear the wave vanish.",
        RollOn(prediction.Demonstration.Name, InWords.Angle(NearestNull(prediction, evaluation))));

    private static Mend Run(string name, string from, string to) => Rearranging.Setting(
        $"Let '{name}' run from {from} to {to}.",
        new MendedKey($"demonstrations.{name}.from", InWords.Typed(from)),
        new MendedKey($"demonstrations.{name}.to", InWords.Typed(to)));

    private static Mend RollOn(string name, string to) => new($"Roll on to {to}.", $"demonstrations.{name}.to", InWords.Typed(to));

    private static double NearestNull(Prediction prediction, PolarisationEvaluation evaluation)
    {
        double ahead = evaluation.StrongestAt + (Math.PI / 2.0);
        return ahead - prediction.Curve.Points[^1].Setting.At > Math.PI ? ahead - Math.PI : ahead;
    }
}
