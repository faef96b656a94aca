using Hornbook.Bench.Demonstrations;

namespace Hornbook.Bench.Findings;

/// <summary>In which band the bench radiates, and how much: a reminder, never a permission.</summary>
internal static class EmissionFindings
{
    internal static IEnumerable<Finding> Of(Inspection bench)
    {
        double radiated = bench.Source.WorstCasePower * bench.Scene.Source.RealisedGain;
        string[] bands = [.. EmissionBand.All.Where(b => b.Contains(bench.Plan.Frequency)).Select(b => Sentence(b, radiated))];
        string where = bands.Length > 0 ? InWords.Joined(bands) : "none of the bands that are commonly open to such devices";
        yield return new Finding(Severity.Note, "emission",
            $"The bench radiates up to {InWords.Power(radiated)} e.i.r.p. at {InWords.Frequency(bench.Plan.Frequency)}, which lies in {where}.",
            "Radiating needs a licence or an exempt device in most countries, and a bench is not exempt because its frequency is: the local rule decides.",
            null);
    }

    private static string Sentence(EmissionBand band, double radiated) => band.RadiatedPower is double allowed
        ? $"{band.Name}, {InWords.Power(allowed)} e.i.r.p. ({(radiated <= allowed ? "kept" : "exceeded")})"
        : band.Name;
}
