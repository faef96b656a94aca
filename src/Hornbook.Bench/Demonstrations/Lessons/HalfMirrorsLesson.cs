using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the two half mirrors.</summary>
internal static class HalfMirrorsLesson
{
    internal static Lesson Of(BenchPlan plan)
    {
        double half = 0.5 * FreeSpace.Wavelength(plan.Frequency);
        return new Lesson(
            "Stand the two half mirrors square to the axis and face to face, a hand's breadth apart, with a millimetre scale along the foot of the second; slide that one slowly away along the axis. Keep the mouths well clear of them.",
            "Mirrors that are not parallel: a few degrees, and the wave walks off sideways before it has gone to and fro often enough. The horn is a mirror too: stand it askew by a hair, or far off. "
            + "The far tail of a wave that spreads dulls the peaks when the gap grows.",
            "Two half mirrors let through half of a half, a quarter, wherever they stand.",
            $"It depends on the gap to the millimetre: every {InWords.Length(half)} the tone leaps up, at best to nearly what it was with no mirrors at all, and in between it is far less than a quarter. Two obstacles can be less than one.",
            "Push a child on a swing. Push whenever it comes, and small pushes make it fly; push at any other time and you stop it. The wave runs to and fro between the mirrors, and each time round a new piece of wave comes in to push. "
            + "Is the gap right, they all push together.",
            "Each round trip multiplies by r² e^{−2jkd}: P = T²/|1 − r² e^{−2jkd}|², with maxima each time d grows by λ/2 (wavelength = twice the distance between maxima) and minima lower by ((1 − |r|²)/(1 + |r|²))². "
            + "Half the maximum is left at ± asin((1 − |r|²)/2|r|)/2π of a wavelength: the more the mirrors return, the sharper. Without loss the maximum is 1 however little each lets through.");
    }
}
