namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the closed box.</summary>
internal static class ClosedBoxLesson
{
    internal static Lesson Of() => new(
        "Close the grid into a flat box of card or foam, with its strips at 45° to the handle. Roll source and receiver by 45° the same way, so that their fields are parallel, and hold the box upright between them, close to a mouth. "
        + "Write IN and OUT on its faces if you like; say nothing of what is inside until the last question.",
        "A box smaller than the beam. A handle that leans: ten degrees already let something through. Ends whose fields are not parallel: check with nothing between first. "
        + "Flip the box like a page, about its handle; turned in its own plane by a quarter it would change as well and give the game away.",
        "The box has a way in and a way out: it is a valve that lets the wave pass in one direction only.",
        "Leave the box as it is and let source and receiver change places: silent before, silent now. So it is not the way that matters. What the flip changed is the slant of the strips: seen from the source they leaned with the field and now lean across it.",
        "Draw a line on a window pane that leans to the right. Walk round and look at it from the other side: now it leans to the left, and yet nobody touched it. The box has such a slanting fence inside. "
        + "From one side it leans as the wave does and stops it, from the other it leans the other way and lets it go.",
        "A turn by 180° about the handle takes strips at +45° to −45°: from along E to across it. Turning the box is the same as walking the whole bench round it, which leaves the box and mirrors the slant of E. "
        + "It is not the same as exchanging the ends, which by Lorentz's reciprocity changes nothing in any box made of metals and dielectrics; a true one-way device needs a magnetised ferrite.");
}
