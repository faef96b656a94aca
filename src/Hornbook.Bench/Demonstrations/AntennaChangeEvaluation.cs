using Hornbook.Bench.Readings;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The gain that the bench will show.</summary>
/// <param name="Changed">Which end's antenna is changed.</param>
/// <param name="Steps">One for each antenna, in the order shown.</param>
public sealed record AntennaChangeEvaluation(BenchEnd Changed, IReadOnlyList<AntennaStep> Steps) : Evaluation
{
    internal static AntennaChangeEvaluation Of(Scene scene, AntennaChangeDemonstration demonstration, Curve curve)
    {
        double[] links = curve.Links;
        double[] realised = [.. demonstration.Antennas.Select(name => scene.Antenna(name).RealisedGain)];
        IEnumerable<AntennaStep> steps = demonstration.Antennas.Select((name, i) => new AntennaStep(
            name,
            Decibels.FromRatio(scene.Antenna(name).Gain),
            Decibels.FromRatio(realised[i]),
            TextbookComparison.ErrorDb(links[i], links[0]),
            Decibels.FromRatio(realised[i] / realised[0])));
        return new AntennaChangeEvaluation(demonstration.Changed, [.. steps]);
    }
}
