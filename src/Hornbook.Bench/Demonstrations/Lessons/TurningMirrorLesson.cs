using Hornbook.Bench.Layout;
using Hornbook.Physics;

namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the grid before a mirror.</summary>
internal static class TurningMirrorLesson
{
    internal static Lesson Of(BenchPlan plan)
    {
        double eighth = FreeSpace.Wavelength(plan.Frequency) / 8.0;
        return new Lesson(
            $"Stand source and receiver side by side, both looking at the middle of the mirror, and the grid flat before it on four spacers of foam, strips at 45° to the source's field. "
            + $"A gap of {InWords.Length(eighth)}, or three or five times that, makes the wave circular; twice that turns its field across. Seen aslant the gap must be a little wider.",
            "A gap that is not the same everywhere: half a millimetre counts. Strips at another angle than 45°: the two parts are then not equally strong, and the circle becomes an ellipse. "
            + "The straight way from mouth to mouth, where the two stand too close.",
            "A mirror sends the wave back as it came; and a wave's field lies some way or other, up or across or aslant.",
            "Roll the receiver: with the mirror alone the tone dies at 90°, with the grid before it at the right gap it does not care. The field that comes back lies no way at all; it goes round, once for every wave.",
            "Hold one end of a rope and swing it up and down, and a friend swings it left and right. Do both at once and the rope swings along a slanting line. But let one of you start a quarter of a swing late, "
            + "and the hand goes round in a circle, and the rope becomes a corkscrew. The grid and the mirror are those two: one part of the wave turns back a little later than the other.",
            "Along the strips E returns at the grid, across them at the mirror, δ = 2kd cos θ later, each with 1/√2 of the amplitude. δ = π/2 is a circle (2d cos θ = λ/4), δ = π a field turned by 90°, "
            + "δ = 2π a plain mirror. A crossed receiver hears sin²(δ/2), a parallel one cos²(δ/2). It is a wave plate for centimetre waves, used in reflection.");
    }
}
