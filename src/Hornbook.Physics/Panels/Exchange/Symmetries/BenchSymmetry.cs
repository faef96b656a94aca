using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Mirrorings;

namespace Hornbook.Physics.Panels.Exchange.Symmetries;

/// <summary>The mirror planes through the source's axis, and the half turn about it, that leave a source and its panels as they are. Immutable.</summary>
/// <remarks>
/// What source and panels map onto themselves maps their currents onto themselves too, but for a sign that is the source's: J(S r) = ±S J(r) and M(S r) = ±det(S) S M(r). So one of two
/// or four parts of each panel need be worked out. Eq. panels (6).
/// </remarks>
/// <param name="Axes">The source's frame.</param>
/// <param name="Sideways">The sign of the currents under that mirroring; 0 where the bench has it not.</param>
/// <param name="Upright">The same.</param>
/// <param name="HalfTurn">The same.</param>
internal readonly record struct BenchSymmetry(Frame Axes, int Sideways, int Upright, int HalfTurn)
{
    // What is off by less than that stands on the axis [m], and in line with it [-]: a rounding of coordinates, which the waves do not notice.
    private const double SamePlace = 1e-8;
    private const double SameDirection = 1e-9;

    /// <summary>The mirrorings that the bench has.</summary>
    internal IEnumerable<Mirroring> All => MirrorImages.All.Where(HasSign);

    /// <summary>The sign of the currents under a mirroring; 0 where the bench has it not.</summary>
    internal int Sign(Mirroring mirroring) => mirroring switch
    {
        Mirroring.Sideways => Sideways,
        Mirroring.Upright => Upright,
        Mirroring.HalfTurn => HalfTurn,
        _ => 1,
    };

    /// <summary>Of a source and panels.</summary>
    /// <param name="source">The source.</param>
    /// <param name="panels">The panels.</param>
    internal static BenchSymmetry Of(Mouth source, IReadOnlyList<PosedPanel> panels)
    {
        int SignOf(Mirroring mirroring)
        {
            // Whether a panel is alike on both sides is asked last, since that may have to be worked out.
            Mirroring?[] own = [.. panels.Select(panel => SeenBy(source.Axes, panel.Pose, mirroring))];
            return own.All(seen => seen is not null) && panels.Zip(own).All(panel => panel.First.Panel.Symmetry.Has(panel.Second!.Value)) ? source.Sign(mirroring) : 0;
        }

        if (panels.Count == 0)
        {
            return default;
        }

        (int sideways, int upright, int halfTurn) = (SignOf(Mirroring.Sideways), SignOf(Mirroring.Upright), SignOf(Mirroring.HalfTurn));

        // Two of them make the third; should a rounding have it otherwise, one will do.
        bool isWhole = (sideways != 0 ? 1 : 0) + (upright != 0 ? 1 : 0) + (halfTurn != 0 ? 1 : 0) != 2;
        return isWhole ? new BenchSymmetry(source.Axes, sideways, upright, halfTurn)
            : sideways != 0 ? new BenchSymmetry(source.Axes, sideways, 0, 0)
            : new BenchSymmetry(source.Axes, 0, upright, 0);
    }

    /// <summary>A mirroring of the bench as a panel sees it that it maps onto itself, pose and all; null where it does not.</summary>
    internal Mirroring? SeenBy(Pose panel, Mirroring mirroring) => SeenBy(Axes, panel, mirroring);

    /// <summary>The electric current at the image of a place.</summary>
    /// <param name="mirroring">One that the bench has.</param>
    /// <param name="current">At the place, bench frame.</param>
    internal ComplexVector Electric(Mirroring mirroring, in ComplexVector current) => Axes.Turn(MirrorImages.OfElectric(mirroring, Axes.Own(current))) * Sign(mirroring);

    /// <summary>The magnetic one.</summary>
    /// <inheritdoc cref="Electric"/>
    internal ComplexVector Magnetic(Mirroring mirroring, in ComplexVector current) => Axes.Turn(MirrorImages.OfMagnetic(mirroring, Axes.Own(current))) * Sign(mirroring);

    private bool HasSign(Mirroring mirroring) => Sign(mirroring) != 0;

    private static Mirroring? SeenBy(Frame axes, Pose panel, Mirroring mirroring)
    {
        Frame own = Frame.Of(panel).SeenFrom(axes);
        Vector Image(Vector v) => MirrorImages.Of(mirroring, v);
        int SignOf(Vector axis) => (Image(axis) - axis).Length <= SameDirection ? 1 : (Image(axis) + axis).Length <= SameDirection ? -1 : 0;
        (int left, int up) = (SignOf(own.Left), SignOf(own.Up));
        return (Image(own.Origin) - own.Origin).Length <= SamePlace && SignOf(own.Forward) == 1 && left != 0 && up != 0
            ? (left < 0 ? Mirroring.Sideways : Mirroring.None) | (up < 0 ? Mirroring.Upright : Mirroring.None)
            : null;
    }
}
