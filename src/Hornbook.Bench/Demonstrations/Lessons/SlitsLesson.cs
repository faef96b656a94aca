namespace Hornbook.Bench.Demonstrations.Lessons;

/// <summary>What a presenter should know of the slits.</summary>
internal static class SlitsLesson
{
    internal static Lesson Of() => new(
        "Source square before the plate, a few wavelengths of the slits' distance away, so that both slits are lit alike and little goes round the plate. Swing the receiver on a "
        + "string or an arm about the middle between the slits, its mouth towards it. Stand the whole line along one side of the table if you want the higher orders. Slits along "
        + "the electric field have to be wider than half a wavelength.",
        "What goes round the plate: it adds a third wave, and far from the middle a stronger one than the slits. Close more of the plate, or bring the source nearer. A source off "
        + "the middle turns all the angles; take half of the angle between left and right.",
        "Behind two slits there are two bright stripes, one behind each.",
        "The brightest place is behind the bar between the slits, where no straight line leads. Cover one slit, and at a dark place the tone comes up: half as much hole and more tone.",
        "Two friends splash in a pond in step. Where their waves come crest on crest the water rises high; where the crest of one meets the trough of the other it stays flat. The "
        + "slits are the two friends. Walk round the pond: high, flat, high, flat.",
        "The ways differ by d sin θ: bright at sin θ = mλ/d, dark at (m − ½)λ/d. Each slit sends a beam of its own, sinc²(πw sin θ/λ), and the product has its maxima a little "
        + "nearer the middle than the law says; the minima stay. Near by, the ways are worked out exactly: they differ from d sin θ only by d³ sin θ cos² θ/8R² and less than a "
        + "tenth of a degree on a table. A single slit is dark at sin θ = mλ/w.");
}
