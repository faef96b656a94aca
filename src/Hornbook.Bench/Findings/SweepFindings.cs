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

    /// <summary>A distance law is shown over at least this ratio of distances: twice as far is a quarter of the power, as everybody knows it [-].</summary>
    private const double ShortestLaw = 2.0;

    /// <summary>A later beginning is looked for in steps of this ratio [-].</summary>
    private const double LaterBy = 1.1;

    internal static IEnumerable<Finding> Of(Inspection bench, Prediction prediction) => prediction.Evaluation switch
    {
        BeamWidthEvaluation e when e.HalfPowerWidth is null => [Narrow(bench, prediction, e)],
        DistanceEvaluation e when Math.Abs(e.MouthExponent - 2.0) > BentExponent => [Bent(bench, prediction, e)],
        AntennaChangeEvaluation e when !IsTrue(e) => [Misread(bench, prediction, e)],
        PolarisationEvaluation e when e.DepthDb < NullDb => [Shallow(bench, prediction, e)],
        _ => [],
    };

    private static Finding Narrow(Inspection bench, Prediction prediction, BeamWidthEvaluation evaluation) => new(
        Severity.Weakens,
        "half-power-not-reached",
        $"'{prediction.Demonstration.Name}' does not reach half power on both sides.",
        "No beam width can be read off it.",
        Wider(bench, (BeamWidthDemonstration)prediction.Demonstration, evaluation));

    /// <summary>As far to either side as the antenna's own beam is wide; where that is not known or not enough, as far as a horn is ever turned.</summary>
    private static Mend Wider(Inspection bench, BeamWidthDemonstration sweep, BeamWidthEvaluation evaluation)
    {
        double[] halves = [evaluation.OwnHalfPowerWidth ?? Math.PI / 4.0, Math.PI / 3.0, Math.PI / 2.0];
        foreach (double half in halves)
        {
            BeamWidthDemonstration wider = sweep with { From = evaluation.PeakAt - half, To = evaluation.PeakAt + half };
            if (ExposureFindings.KeepsEdges(bench, sweep, wider) && bench.Predict(wider).Evaluation is BeamWidthEvaluation { HalfPowerWidth: not null })
            {
                return Run(sweep.Name, InWords.Angle(wider.From), InWords.Angle(wider.To));
            }
        }

        return new Mend("Use an antenna with a narrower beam.");
    }

    private static Finding Bent(Inspection bench, Prediction prediction, DistanceEvaluation evaluation) => new(
        Math.Abs(evaluation.MouthExponent - 2.0) > 2.0 * BentExponent ? Severity.Weakens : Severity.Note,
        "distance-law-bent",
        $"In '{prediction.Demonstration.Name}', with distances from mouth to mouth, power falls with the exponent {InWords.Rounded(evaluation.MouthExponent, 3)} instead of 2.",
        $"The inverse-square law seems broken: the waves seem to come from {InWords.Length(Math.Abs(evaluation.InverseSquareOrigin))} {(evaluation.InverseSquareOrigin > 0.0 ? "behind" : "before")} the mouths.",
        Later(bench, (DistanceDemonstration)prediction.Demonstration, evaluation));

    /// <summary>The law shown from so far on that it holds, as long as enough of it is left to be heard; else how to draw it.</summary>
    private static Mend Later(Inspection bench, DistanceDemonstration sweep, DistanceEvaluation evaluation)
    {
        string? added = evaluation.InverseSquareOrigin > 0.0
            ? $"add {InWords.Length(evaluation.InverseSquareOrigin)} to each distance before drawing the curve: it then follows the inverse square."
            : null;
        for (double from = sweep.From * LaterBy; sweep.To >= ShortestLaw * from; from *= LaterBy)
        {
            double begin = Math.Ceiling(100.0 * from) / 100.0;
            Prediction later = bench.Predict(sweep with { From = begin });
            if (later.Evaluation is DistanceEvaluation e && Math.Abs(e.MouthExponent - 2.0) <= BentExponent && DemonstrationFindings.IsHeardToMove(later.Curve))
            {
                string text = InWords.Length(begin);
                return new Mend($"Let '{sweep.Name}' begin at {text}{(added is null ? "." : $", or {added}")}", $"demonstrations.{sweep.Name}.from", InWords.Typed(text));
            }
        }

        return new Mend(added is null ? $"Begin beyond {InWords.Length(evaluation.Textbook[0].FarZone)}." : $"{char.ToUpperInvariant(added[0])}{added[1..]}");
    }

    private static Finding Misread(Inspection bench, Prediction prediction, AntennaChangeEvaluation evaluation)
    {
        AntennaStep worst = evaluation.Steps.MaxBy(s => Math.Abs(s.ErrorDb))!;
        return new Finding(Severity.Weakens, "gain-misread",
            $"In '{prediction.Demonstration.Name}' the change to '{worst.Antenna}' is received as {InWords.Decibels(worst.ReceivedDb)}, though the gains differ by {InWords.Decibels(worst.PromisedDb)}.",
            "At this distance the near zone takes part of the larger antenna's gain.",
            Rearranging.Farther(
                bench,
                moved => bench.Predict(prediction.Demonstration, moved).Evaluation is AntennaChangeEvaluation e && IsTrue(e),
                " for this demonstration.",
                "Say so, or show the change with antennas that are smaller: the table is too short for these."));
    }

    private static bool IsTrue(AntennaChangeEvaluation evaluation) => evaluation.Steps.All(step => Math.Abs(step.ErrorDb) <= GainErrorDb);

    private static Finding Shallow(Inspection bench, Prediction prediction, PolarisationEvaluation evaluation) => new(
        Severity.Weakens,
        "null-not-reached",
        $"'{prediction.Demonstration.Name}' falls by {InWords.Decibels(evaluation.DepthDb)} only.",
        "The audience does not hear the wave vanish.",
        RollOn(bench, (PolarisationDemonstration)prediction.Demonstration, NearestNull(prediction, evaluation)));

    private static Mend Run(string name, string from, string to) => Rearranging.Setting(
        $"Let '{name}' run from {from} to {to}.",
        new MendedKey($"demonstrations.{name}.from", InWords.Typed(from)),
        new MendedKey($"demonstrations.{name}.to", InWords.Typed(to)));

    private static Mend RollOn(Inspection bench, PolarisationDemonstration sweep, double end)
    {
        string to = InWords.Angle(end);
        bool helps = bench.Predict(sweep with { To = end }).Evaluation is PolarisationEvaluation { DepthDb: >= NullDb };
        return helps
            ? new Mend($"Roll on to {to}.", $"demonstrations.{sweep.Name}.to", InWords.Typed(to))
            : new Mend("Let both ends face each other, with nothing beside the way: as things stand no roll makes it vanish.");
    }

    private static double NearestNull(Prediction prediction, PolarisationEvaluation evaluation)
    {
        double ahead = evaluation.StrongestAt + (Math.PI / 2.0);
        return ahead - prediction.Curve.Points[^1].Setting.At > Math.PI ? ahead - Math.PI : ahead;
    }
}
