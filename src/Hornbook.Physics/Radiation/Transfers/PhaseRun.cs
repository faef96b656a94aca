namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Along each axis of a box: the largest slope, over k, of the phase of any source once the phase to the sources' centre is taken out.</summary>
/// <param name="Steady">In the middle of the box.</param>
/// <param name="Bent">The largest change of a slope from there to a corner.</param>
internal readonly record struct PhaseRun(Vector Steady, Vector Bent)
{
    /// <summary>With one more source and corner.</summary>
    /// <param name="axes">Axes of the box.</param>
    /// <param name="inMiddle">R̂(r,r') − R̂(r,c') in the middle.</param>
    /// <param name="inCorner">The same in the corner.</param>
    internal PhaseRun With(Frame axes, Vector inMiddle, Vector inCorner) =>
        new(Larger(Steady, axes, inMiddle), Larger(Bent, axes, inCorner - inMiddle));

    private static Vector Larger(Vector largest, Frame axes, Vector slope) => new(
        Math.Max(largest.X, Math.Abs(Vector.Dot(slope, axes.Forward))),
        Math.Max(largest.Y, Math.Abs(Vector.Dot(slope, axes.Left))),
        Math.Max(largest.Z, Math.Abs(Vector.Dot(slope, axes.Up))));
}
