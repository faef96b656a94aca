namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the grid that is rolled between aligned antennas.</summary>
internal static class GridTurnLesson
{
    internal static Lesson Of() => new(
        "Stand the grid close in front of the source's mouth, two or three wavelengths away, so that the whole beam goes through it and little goes round its edges.",
        "A grid that is too small or too far from the mouth: the wave that goes round it does not mind how the strips lie. A hand that reaches into the beam.",
        "The wave is a rope that swings up and down; it slips between upright pickets, so upright strips let an upright wave pass.",
        "It is the other way round: the tone is gone when the strips lie along the field and full when they lie across it. A wave of fields has no width that could get stuck between pickets.",
        "The wave shakes the tiny charges in the metal to and fro. Along a strip they have room to run, and running they make a wave of their own that cancels the first one behind the grid "
        + "and throws it back. Across a narrow strip they have no room, so nothing happens and the wave walks through.",
        "The strips short the component of E along them, E_∥ = 0 at the metal; currents J = n × (H₊ − H₋) re-radiate it. The component across passes: amplitude cos φ of the field at the grid, "
        + "of which the receiver takes cos φ again, so P = P₀ cos⁴ φ. With period well below half a wavelength no other beams leave the grid.");
}
