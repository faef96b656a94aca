using System.Globalization;
using Hornbook.Bench.Demonstrations;

namespace Hornbook.Bench.Programmes;

/// <summary>What could not be had for a demonstration, in words.</summary>
internal static class Shortcomings
{
    private const double FewSteps = 20.0;

    internal static IReadOnlyList<string> Of(Choice choice)
    {
        Merit merit = choice.Merit;
        List<string> sentences = [];
        if (merit.IsDrowned)
        {
            sentences.Add("Nothing of it stands above the noise in any arrangement that was tried.");
        }
        else if (merit.Steps < FewSteps)
        {
            sentences.Add($"Only {InWords.Steps(merit.Steps)} are heard; half the room will miss them.");
        }

        if (merit.Clipped > 0.0)
        {
            sentences.Add($"The tone is clipped at {Share(merit.Clipped)} of its settings; with less gain the rest would be too faint.");
        }

        if (merit.Near > 0.0)
        {
            sentences.Add($"{Share(merit.Near)} of its settings lie within the near zone, where the textbook law does not hold.");
        }

        if (merit.Untrusted > 0.0)
        {
            sentences.Add($"At {Share(merit.Untrusted)} of its settings the prediction is a guide only.");
        }

        if (merit.IsHandInside)
        {
            sentences.Add("The hand that moves things reaches inside the keep-out distance: switch the source off meanwhile, or use a rod.");
        }

        return sentences;
    }

    private static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * share:F0} %");
}
