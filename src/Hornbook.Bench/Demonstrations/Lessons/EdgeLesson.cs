namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the one edge.</summary>
internal static class EdgeLesson
{
    internal static Lesson Of() => new(
        "The plate stands upright between the two mouths, nearer to the receiver than to the source if the source is a horn: the way to the edge should stay well inside its beam. "
        + "Mark on the table where the edge meets the line from mouth to mouth. Push the plate slowly from the lit side through that mark.",
        "A plate so narrow that the wave comes round its other side, or so low that it comes over the top. A narrow beam: it is weak at the edge long before the shadow, and the bright stripe is lost.",
        "A shadow has a sharp border: until the edge reaches the line of sight there is all of the wave, and then nothing.",
        "Before the edge comes to the line the tone grows louder than with no plate at all; on the line itself a quarter of the power is left; and a hand's breadth inside the shadow it can still be heard.",
        "Hold your hand at the edge of a stream: the water swirls round it. A wave can look round corners, the better the longer it is. Light does it too, but its waves are so "
        + "tiny that you have to look very closely at the rim of a shadow to see the stripes.",
        "With v = h √(2(a + b)/(λab)) the field is ((1 + j)/2) ∫_v^∞ exp(−jπt²/2) dt: ½ at v = 0, so −6.02 dB; the first maximum is at v = −1.22 with 1.37 times the power, +1.37 "
        + "dB; from v = 1 on it falls as 1/(πv√2). The Cornu spiral shows why: its length runs on, but the straight line from its end pulses.");
}
