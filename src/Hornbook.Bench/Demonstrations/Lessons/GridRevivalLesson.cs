namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the grid that revives crossed antennas.</summary>
internal static class GridRevivalLesson
{
    internal static Lesson Of() => new(
        "Roll the receiver by 90° and let everybody hear that nothing is left. Then hold the grid close to one of the mouths, two or three wavelengths away, square to the axis, and roll it slowly in its own plane.",
        "A null that was not deep before the grid came: adjust the roll of the receiver first, without it. A grid held askew to the axis, and a hand in the beam.",
        "A grid is an obstacle. Where nothing comes through, one obstacle more can only leave less.",
        "With the strips at 45° the tone comes back; along or across the source's field it is gone again. The grid does not just take away: what leaves it is a wave whose field lies across its strips, a new direction.",
        "The wave pushes up and down; the receiver feels left and right only: silence. The grid lets the slanting part of the push go on. "
        + "A slanting push is a bit of up and down and a bit of left and right, both at once, and that last bit the receiver feels.",
        "Across the strips E cos α passes, and the receiver, crossed with the source, takes sin α of that: E sin α cos α = ½ E sin 2α, in power ¼ sin² 2α. At 45° it is a quarter, −6 dB: "
        + "half of the power is thrown back by the grid, and of the other half the receiver takes half. The grid turns the field by two projections; without the one between, nothing turns it.");
}
