using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Lattices;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Places of samples that send or receive together: a mouth, a panel's cells, or those of them on one side of another panel. Immutable.</summary>
internal sealed class Body
{
    private readonly int[]? _chosen;
    private readonly Lazy<SampleTree> _tree;
    private readonly Lazy<Lattice?> _lattice;

    private Body(Vector[] points, Frame axes, int[]? chosen)
        : this(points, axes, chosen, () => SampleTree.Of(points, axes), () => Lattice.Of(points))
    {
    }

    private Body(Vector[] points, Frame axes, int[]? chosen, Func<SampleTree> tree, Func<Lattice?> lattice)
    {
        (Points, Axes, _chosen) = (points, axes, chosen);
        _tree = new Lazy<SampleTree>(tree, LazyThreadSafetyMode.PublicationOnly);
        _lattice = new Lazy<Lattice?>(lattice, LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The places [m]; at least one.</summary>
    internal Vector[] Points { get; }

    /// <summary>Axes along which they are flat, bench frame.</summary>
    internal Frame Axes { get; }

    /// <summary>The same, sorted for fast transfers of the whole body's currents; made when it is first asked for.</summary>
    internal SampleTree Tree => _tree.Value;

    /// <summary>The lattice on which they lie; null where they lie on none.</summary>
    internal Lattice? Lattice => _lattice.Value;

    /// <summary>A whole body.</summary>
    internal static Body Of(Vector[] points, Frame axes) => new(points, axes, null);

    /// <summary>A whole body in its own frame, to be held in poses: it is sorted once for all of them.</summary>
    internal static Body Own(Vector[] points) => Of(points, Frame.Of(default));

    /// <summary>A whole body of its own frame held in a pose.</summary>
    /// <param name="pose">That frame as the bench sees it.</param>
    internal Body Posed(Frame pose) => new(Array.ConvertAll(Points, pose.Place), pose, null, () => Tree.Posed(pose), () => Lattice?.Posed(pose));

    /// <summary>The part for which a condition holds: the body itself where that is all of it, null where it is none.</summary>
    internal Body? Where(Predicate<Vector> condition)
    {
        int[] chosen = [.. Enumerable.Range(0, Points.Length).Where(i => condition(Points[i]))];
        return chosen.Length == Points.Length ? this
            : chosen.Length == 0 ? null
            : Part(Array.ConvertAll(chosen, i => Points[i]), chosen);
    }

    /// <summary>Those of the whole body's currents that flow in this part.</summary>
    internal CurrentSamples Chosen(CurrentSamples whole) => _chosen is null ? whole : whole.Chosen(_chosen);

    private Body Part(Vector[] points, int[] chosen) => new(points, Axes, chosen, () => SampleTree.Of(points, Axes).Numbered(chosen, Points.Length), () => Lattice.Of(points));
}
