using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Findings;

/// <summary>In which bands the bench radiates, and how much: a reminder, never a permission.</summary>
internal static class EmissionFindings
{
    internal static IEnumerable<Finding> Of(Inspection bench)
    {
        double radiated = PowerDensity.EquivalentIsotropicPower(bench.Scene.Source, bench.Source.WorstCasePower);
        string[] rules = [.. EmissionRules.At(bench.Plan.Frequency).Select(rule => Sentence(rule, radiated))];
        string which = rules.Length > 0 ? string.Join(" ", rules) : "No rule that opens that frequency to such devices is known here.";
        yield return new Finding(Severity.Note, "emission",
            $"The bench radiates up to {InWords.Power(radiated)} e.i.r.p. at {InWords.Frequency(bench.Plan.Frequency)}. {which}",
            EmissionRules.Note,
            null);
    }

    private static string Sentence(EmissionRule rule, double radiated) => rule.HighestEirp is double allowed
        ? $"{rule.Title} ({rule.Instrument}): up to {InWords.Power(allowed)}, {(radiated <= allowed ? "kept" : "exceeded")}."
        : $"{rule.Title} ({rule.Instrument}): for {rule.Who}.";
}
