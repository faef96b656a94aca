namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the change of antennas.</summary>
internal static class AntennaChangeLesson
{
    internal static Lesson Of() => new(
        "Keep the mouth of every antenna in one and the same place on the axis, and look along it that it points straight at the other end. Stand the two ends as far apart as the table allows.",
        "An antenna that points a few degrees past the other end: it costs the narrow beam most, and then the better antenna sounds the worse. Too near, a large mouth gives less than its gain promises. "
        + "Where the tone is clipped, two antennas sound alike.",
        "A big horn is an amplifier: it puts power in.",
        "There is nothing in a horn that could add power, and each of them is given the same. Turn the big one a little aside: its tone falls below that of the small one. What it gives ahead it has taken from all around.",
        "Cup your hands round your mouth and call. Your voice has not become any stronger, but it all goes one way, and whoever stands there hears you better, and whoever stands aside hears you worse. "
        + "It works for ears too: with a hand behind your ear you hear better what is in front of you.",
        "Gain is 4π times the power per solid angle over the power accepted: G = η 4πA/λ², with η near one half for a horn of optimum flare. By reciprocity the same number gives the area that catches, "
        + "A_e = Gλ²/4π. Received powers differ as the realised gains (1 − |Γ|²) G do, far away; within 2D²/λ the wave is bent over the mouth, and part of the gain is not yet there.");
}
