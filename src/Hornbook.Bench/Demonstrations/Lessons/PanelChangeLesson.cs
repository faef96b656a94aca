namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the panels that are put in one after another.</summary>
internal static class PanelChangeLesson
{
    internal static Lesson Of() => new(
        "Put every panel in the same place, two or three wavelengths in front of a mouth, where it covers the whole beam; a stand with a slot keeps it square. Begin with what people hold to be thick, end with kitchen foil.",
        "A panel that the beam goes round: a small piece of metal does not silence the bench. What a panel throws back into the horn makes the tone waver as it is moved by a quarter of a wavelength: lean it a little. "
        + "Wood and cloth change with their moisture, so keep a dry and a wet piece of the same; let nothing drip near the supply.",
        "What stops light stops this wave as well, and the thicker and harder a thing is, the better it stops it.",
        "Foam and a dry board, which nobody can look through, hardly change the tone. Foil thinner than paper ends it; glass, which is clear to the eye, throws a good part back; and a cloth that let it through when dry stops it when wet: half a millimetre of water throws back two thirds and keeps most of the rest.",
        "The wave shakes the tiny charges in everything it meets. In foam there is hardly anything to shake. In metal they are free to run, and running they send the wave back. "
        + "Every bit of water has a plus end and a minus end, so the wave twists it to and fro; it rubs against its neighbours and gets warm. That is how the wave is used up, and how an oven works.",
        "Each face of a sheet returns (1 − n)/(1 + n) of the field, and the two faces interfere: most at an odd number of quarter waves inside, nothing at a number of halves. On its way the wave fades by "
        + "α = (π√ε′/λ) tan δ. Metal returns all of it within a skin depth of a micrometre. Water relaxes near 17 GHz: its ε″ at 10 GHz is about 30, and a millimetre of it costs several decibels.");
}
