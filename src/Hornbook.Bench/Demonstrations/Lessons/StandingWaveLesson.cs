namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the standing wave.</summary>
internal static class StandingWaveLesson
{
    internal static Lesson Of(double wavelength)
    {
        string half = InWords.Length(0.5 * wavelength), whole = InWords.Length(wavelength);
        return new Lesson(
            "Stand the plate square to the beam. Hold the probe, an open guide, from the side with its mouth in the beam, so that it looks across: the wave that comes and the one "
            + "that returns then count alike. Slide the plate along a millimetre scale, your hand behind it. Count several minima and divide.",
            "A plate that is not square: the returning wave misses the probe. A horn that stands too near: it is a mirror too and throws the wave back once more; then the minima "
            + "shift. A probe that looks at the source hears the returning wave only with the back of its head. Your own body beside the beam.",
            "A wave that returns fills up the gaps of the one that comes: with a mirror there must be more everywhere.",
            $"There is more at some places and nearly nothing at others, every {half}: move the plate by so little and the tone goes from full to gone. More wave and less tone: two waves can be less than one.",
            "Shake a rope that is tied to a door: your wave runs to the door and comes back, and where they pass through each other some places of the rope swing wildly and some stay "
            + "still. The still places do not move along. Your probe sits in the air like a ladybird on that rope, and as the plate moves the still places slide over it.",
            $"E = E₀(e^(−jkx) − e^(+jkx)) = −2j E₀ sin kx, x from the plate, as E is zero at the metal: zeros every λ/2 = {half}, so λ = {whole}, twice the distance of two minima. The "
            + "waves spread, so the returning one is weaker and the zeros are minima; and where the probe stands off the axis the way is 2x cos θ, so that the ways from minimum to "
            + "minimum are worked out, each from its image, and not just doubled.");
    }
}
