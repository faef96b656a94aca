namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of Lloyd's mirror.</summary>
internal static class LloydLesson
{
    internal static Lesson Of(double wavelength)
    {
        string whole = InWords.Length(wavelength);
        return new Lesson(
            "Both mouths look at each other, and the mirror lies or stands beside the way, half way along, its normal across it. Move it away from the way along its normal. Begin "
            + "close by: at grazing angles a mirror of half a metre is long enough for the first few fringes only.",
            "A mirror that is too short: the wave that it should throw back runs past its ends. Horns so narrow that they do not send to the mirror. The table as an unwanted second "
            + "mirror. And how the field lies: along the mirror it is turned over, across a metal one it is not.",
            "Touching the mirror the two ways are equally long, so the two waves must add up: there it is brightest.",
            $"There it is darkest. With the field along the mirror the first minimum is at no difference at all and the next where the mirrored way is {whole} longer. Roll both ends "
            + "by a quarter turn on a metal mirror, and dark and bright change places.",
            "Two people carry a message, one straight and one by way of the wall. If they come in step you hear it twice as loud. But the wall turns everything over: push becomes "
            + "pull. So when both ways are equally long, one pushes while the other pulls, and nothing moves. That is why you lose the radio of a boat that is low on the water.",
            "The mirrored wave comes from an image: Δ = √(L² + 4h²) − L. With E along the mirror r = −1, half a wave is lost and it is dark at Δ = mλ; with E upright on metal r = +1 "
            + "and it is dark at (m + ½)λ. A table top of wood or stone leaves an upright field unturned only where it is met steeper than Brewster's angle; at grazing angles r → −1 for every "
            + "field and every sheet but metal: no reception at the ground itself.");
    }
}
