using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the distance law.</summary>
internal static class DistanceLesson
{
    internal static Lesson Of(BenchPlan plan)
    {
        double half = 0.5 * FreeSpace.Wavelength(plan.Frequency);
        return new Lesson(
            "Stand the source at one end of the table and slide the receiver along its axis, at one height, along a straight edge. Read the distance from mouth to mouth, and give the place where it is twice the first one a mark.",
            $"The wave that goes to and fro between the two mouths: every {InWords.Length(half)} the tone wavers; take the middle of it. The echo of the table and of the hand that pushes. "
            + "Too near, the law is not there yet.",
            "Twice as far, half as strong; or: the air uses the wave up on its way.",
            "Twice as far it is nearly a quarter, not a half. And the air takes next to nothing: what the receiver no longer catches goes past it, and a second receiver beside it finds it there.",
            "Spread one pat of butter over one slice of bread. Now spread it over a slice that is twice as wide and twice as long: that is four times the bread, so the butter is four times as thin. "
            + "No butter is lost. The wave does the same: twice as far away it must cover four times the room.",
            "The same power goes through every sphere around the source, so S = P G/4πr² and the field falls as 1/r; both gains together are Friis's formula, P_r = P_s G_s G_r (λ/4πr)². "
            + "A horn's wave seems to begin behind its mouth, which makes it 1/(r + r₀)² from mouth to mouth; within 2D²/λ of a mouth of size D neither holds exactly.");
    }
}
