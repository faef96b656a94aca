namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the zone plate.</summary>
internal static class ZonePlateLesson
{
    internal static Lesson Of() => new(
        "The plate stands square on the axis, source and receiver at the distances for which its rings are cut. Take it away and put it back while the receiver stays; then move the receiver along the axis.",
        "A plate off the axis by a centimetre, or leaning. Narrow antennas: they hardly light the outer rings, which then add little. Other distances than those it is cut for.",
        "A plate that covers half of the way takes half of the wave away.",
        "It is the other way round: with the plate in, the tone is far louder than with nothing in the way. It stops just those parts that would have come late and pulled while the others pushed.",
        "A crowd pulls at a rope, half of them in time and half out of time, and hardly anything moves. Send home everybody who is out of time: fewer people, and the rope flies.",
        "The circle n is drawn where the way is n λ/2 longer: r_n ≈ √(nλ ab/(a + b)). Each zone sends 2 E₀ at the receiver, with turning sign; together they leave E₀. With N "
        + "zones open, and the others shut, E = 2N E₀: 6 dB for the first alone, 12 dB for two, 15.6 dB for three. Unevenly lit zones make it less. More foci at 1/3, 1/5 … of the "
        + "focal length.");
}
