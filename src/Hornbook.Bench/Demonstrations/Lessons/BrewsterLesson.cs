namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of Brewster's angle.</summary>
internal static class BrewsterLesson
{
    internal static Lesson Of() => new(
        "Lay both antennas on their sides, so that their fields lie flat. Stand the sheet upright on a turning plate, and let the receiver ride on an arm about the same pivot: for each degree of the sheet the arm goes two. "
        + "A sheet of a quarter wave inside, some five millimetres of clear plastic, returns most; put felt or foam on the edge of the table behind it.",
        "A sheet too small: seen aslant it shrinks, and its edges glow where its face should be dark. The straight way from mouth to mouth past the sheet, when the arm has nearly come round. "
        + "A sheet of half a wave inside is invisible at every angle, and shows nothing.",
        "The flatter the wave comes in, the more is thrown back: so it is with pebbles on water, and with the glare on a wet road.",
        "With the fields lying flat the reflection first dies away, at one angle it is as good as gone, and only then it grows. Roll both ends upright at that angle and it is back at once; no pebble cares how it is held.",
        "The wave makes the charges in the plastic swing, and each of them sends a new wave; all of these together are the reflection. But nothing that swings can send along the line on which it swings: "
        + "look at a rod end-on and you see no swing. At this one angle the mirror direction is just that line.",
        "For E in the plane of incidence r_p = (ε′ cos θ − √(ε′ − sin²θ)) / (ε′ cos θ + √(ε′ − sin²θ)) vanishes at tan θ = √ε′, where the refracted and the mirrored direction are at right angles and the dipoles in the sheet point along the latter. "
        + "Both faces vanish together, whatever the thickness; that only decides how much there is at other angles, |r (1 − e^{−2jδ})|, most at a quarter wave inside.");
}
