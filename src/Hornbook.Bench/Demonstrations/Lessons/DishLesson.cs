namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the dish.</summary>
internal static class DishLesson
{
    internal static Lesson Of() => new(
        "The dish looks at the source, at the far end of the table. The receiver, a small open guide, stands at the focus and looks into the dish, held from below or from behind "
        + "so that little stands in the way. Move it along the axis for the best tone.",
        "A receiver that sees only the middle of the dish, or past its rim. A large horn at the focus stands in its own light. A source that is near: the focus moves out, 1/b = "
        + "1/f − 1/r. Half a wavelength off the focus and the tone is nearly gone.",
        "The dish makes the wave stronger, like an amplifier.",
        "It has no current and adds nothing: it collects. What would have gone by on all sides now meets in one point. Turn the dish by a few degrees, or move the receiver by the "
        + "breadth of a finger, and all of it is gone.",
        "Put out a cup in the rain and then a big umbrella turned upside down, with the cup where all the drops run together. The rain is not stronger; you just catch more of it, "
        + "and the shape of the umbrella brings all the drops to the cup at the same moment.",
        "A paraboloid makes all the ways from a far source over its surface to the focus equally long. Gain η (πD/λ)², with η about 0.55 to 0.6: what runs over the edge "
        + "(spill-over) against what lights the edge too little (taper). The best feed is about 10 dB weaker towards the rim than in the middle, where the half angle to the rim is "
        + "2 arctan(D/4f). The far zone begins at 2D²/λ: metres beyond any table, so the dish sees a sphere, and a little is lost.");
}
