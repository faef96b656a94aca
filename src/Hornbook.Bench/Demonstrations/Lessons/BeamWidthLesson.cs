namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the beam width.</summary>
internal static class BeamWidthLesson
{
    internal static Lesson Of(BenchEnd turned)
    {
        string end = turned == BenchEnd.Source ? "source" : "receiver";
        string other = turned == BenchEnd.Source ? "receiver" : "source";
        return new Lesson(
            $"Stand both ends on one axis at the same height, and turn the {end} about the vertical through the middle of its mouth. Let the {other} stand as far away as the table allows.",
            $"A {end} that is turned about its back: its mouth wanders sideways, and the curve leans. Walls, people and bottles that the beam strikes on its way round send echoes. "
            + "Too near, every beam is read too wide.",
            "A horn squirts the wave out like a nozzle: the wider the mouth, the wider the jet.",
            "The wider mouth has the narrower beam. Turn a large horn and a small one by the same angle: the tone of the large one is gone long before that of the small one.",
            "Picture a row of people along the edge of a pond who all slap the water at the same moment. Straight ahead all their ripples arrive together and make one big wave. "
            + "Off to the side those of the near ones come first and those of the far ones later, crests fall into troughs, and little is left. The longer the row, the sooner that happens.",
            "The far field is the Fourier transform of the field over the mouth, so the width goes as λ/D. At half power it is 50.8° λ/B across an evenly lit mouth (E plane) and 68.1° λ/A across the half "
            + "sine of TE10 (H plane); the bent phase of a flare widens both. An even mouth has its first null where its two edges differ by one wavelength, sin θ = λ/B. "
            + "By reciprocity it is the same whether the antenna sends or receives.");
    }
}
