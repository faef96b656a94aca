namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of polarisation.</summary>
internal static class PolarisationLesson
{
    internal static Lesson Of() => new(
        "Stand both ends on one axis at the same height, and roll the receiver about that axis so that its mouth stays in place and goes on looking straight at the source. A paper arrow on each mouth shows where its field lies.",
        "Echoes from table, stands and walls: they come slanted and fill the silence up. A receiver that nods or looks aside while it is rolled.",
        "The receiver still looks straight at the source, so it gets just as much however it is held.",
        "Held across, it hears nothing, though its mouth is as wide open as before. Half-way round, half the power is left. The wave pushes in one direction only, and the receiver feels pushes in one direction only.",
        "Put a finger on a table edge and push along it, up, or away: pushes have a direction. This wave pushes up and down and never sideways. Inside the receiver is a little antenna that feels pushes along itself alone. "
        + "Held upright it is shaken end to end; laid across it is pushed in its flank, and nothing runs along it.",
        "The guide carries TE10 alone, whose E stands across its broad walls. Of a field at the angle φ it takes the component E cos φ: P = P₀ cos² φ, Malus's law; −3 dB at 45°. "
        + "A mouth with mirror symmetry has no cross-polar field on its axis, so the null is as deep as the symmetry of the bench is good.");
}
