using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>Finds the shortest horn for a gain.</summary>
internal static class GainWish
{
    internal static HornChoice Choose(Feed feed, double gain)
    {
        double openGuide = feed.OpenGuideGain;
        if (gain <= openGuide)
        {
            return HornChoice.Refused(WishProblem.GainBelowOpenGuide, gain, openGuide);
        }

        double shortest = HornWish.ShortestInWaves * feed.Wavelength, longest = HornWish.LongestInWaves * feed.Wavelength;
        double most = Gain(feed, longest, 1.0);
        if (gain > most)
        {
            return HornChoice.Refused(WishProblem.GainTooHigh, gain, most);
        }

        if (gain < Gain(feed, shortest, 1.0))
        {
            return ByOpening(feed, shortest, gain);
        }

        // In the logarithms gain and length are nearly proportional, so that the root needs few steps.
        double root = Brent.FindRoot(
            x => Math.Log(Gain(feed, Math.Exp(x), 1.0) / gain), Math.Log(shortest), Math.Log(longest), 1e-10, 100);
        return Found(feed, Math.Exp(root), 1.0);
    }

    private static HornChoice ByOpening(Feed feed, double length, double gain)
    {
        double closed = Gain(feed, length, 0.0);
        return gain <= closed
            ? HornChoice.Refused(WishProblem.GainBelowOpenGuide, gain, closed)
            : Found(feed, length, Brent.FindRoot(openness => Math.Log(Gain(feed, length, openness) / gain), 0.0, 1.0, 1e-10, 100));
    }

    private static double Gain(Feed feed, double length, double openness) =>
        HornFigures.Of(OptimumMouth.ForLength(feed, length, openness), feed.Frequency).Gain;

    private static HornChoice Found(Feed feed, double length, double openness) =>
        HornChoice.Found(HornFigures.Of(OptimumMouth.ForLength(feed, length, openness), feed.Frequency));
}
