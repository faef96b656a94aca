namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the law of reflection.</summary>
internal static class ReflectionLesson
{
    internal static Lesson Of(double incidence)
    {
        string angle = InWords.Angle(Math.Abs(incidence)), twice = InWords.Angle(2.0 * Math.Abs(incidence));
        return new Lesson(
            $"Chalk a circle round the foot of the plate and mark every ten degrees, with zero towards the source. Turn the plate so that its normal points to {angle}; swing the "
            + $"receiver along the circle, its mouth always towards the plate. The tone is best about {twice}.",
            "A plate that is too small, or seen too much from the side: then its edges take part, and the top of the beam splits in two; take the middle between its two flanks. A "
            + "plate that leans forward or back throws the wave over the receiver.",
            "A wave bounces off in all directions from a metal plate, as from a wall: metal disturbs it.",
            "Swing past the right place and the tone is gone: the plate throws the whole wave one way, and nearly as much arrives as if the receiver stood straight ahead at the same "
            + $"distance. Turn the plate by a little and the beam turns by twice that; at {angle} it has gone round by {twice}.",
            "Throw a ball at a smooth wall and you know where it goes: as slanting as it came, to the other side. In a mirror you see the lamp as if it stood behind the glass. This "
            + "plate is a mirror too; your eyes just are not made for this kind of light. To a wave as long as your finger is wide, plain metal is as smooth as glass.",
            "Every bit of the plate sends out a wave, late by its own way: the ways are equal to first order where the angle of incidence equals that of reflection (Fermat), and only "
            + "there do they add up. E tangential to metal is zero, so the mirrored wave is that of an image source behind the plate: P is as over the unfolded way a + b, as long as "
            + "the plate is larger than its first Fresnel zone, √(λ a b/(a + b)) to each side. A plate no wider than that makes a beam of its own, about λ/D wide.");
    }
}
