using Hornbook.Physics.Panels.Outlines.Boundaries;
using Hornbook.Physics.Panels.Outlines.Cutting;
using Hornbook.Physics.Panels.Outlines.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A flat panel of any outline with any openings, in the plane x = 0. Immutable.</summary>
/// <remarks>
/// Circles are true circles for the rims, and for the cells of what is bounded by circles about one centre; elsewhere areas are those of polygons
/// with 180 corners of the same area as the circle. Details smaller than a millionth of the panel are not seen. Docs: physics/outlines.
/// </remarks>
public sealed class FlatSurface : PanelSurface
{
    private readonly Region _region;
    private readonly Lazy<IReadOnlyList<IReadOnlyList<Vector>>> _loops;

    /// <summary>A figure, to which others are added, or from which they are taken away, one after the other.</summary>
    /// <param name="shape">What it begins with.</param>
    /// <param name="pieces">What is done to it, in order.</param>
    /// <exception cref="ArgumentException">Nothing is left.</exception>
    public FlatSurface(Shape shape, params IReadOnlyList<Piece> pieces)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(pieces);
        _region = new Region([Piece.Added(shape), .. pieces]);
        Boundary = Boundaries.Boundary.Of(_region);
        if (Boundary.Length == 0)
        {
            throw new ArgumentException("pieces: nothing is left of the panel; must leave some of it", nameof(pieces));
        }

        Envelope box = new();
        Array.ForEach(Boundary, piece => box.ExpandToInclude(piece.Box));
        (Width, Height) = (box.Width, box.Height);
        Rims = Array.ConvertAll(Boundary, piece => piece.ToRim());
        _loops = new Lazy<IReadOnlyList<IReadOnlyList<Vector>>>(() => [.. LinearComponentExtracter.GetLines(_region.Area).Select(Loop)]);
    }

    /// <inheritdoc/>
    public override double Width { get; }

    /// <inheritdoc/>
    public override double Height { get; }

    /// <inheritdoc/>
    public override bool IsFlat => true;

    /// <inheritdoc/>
    public override IReadOnlyList<Rim> Rims { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<Vector>> Loops => _loops.Value;

    /// <summary>Where the sheet ends, circles as circles.</summary>
    internal BoundaryPiece[] Boundary { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Cell> Cells(double spacing)
    {
        Require.Positive(spacing);
        return TensorCells.Of(_region, Boundary, spacing)
            ?? PolarCells.Of(_region, Boundary, spacing)
            ?? new RasterCells(_region, spacing).Cut();
    }

    /// <summary>Whether there is sheet at a point of the plane.</summary>
    internal bool Contains(Vector point) => _region.Contains(point);

    private static IReadOnlyList<Vector> Loop(Geometry ring) =>
        [.. ring.Coordinates.Skip(1).Select(corner => new Vector(0.0, corner.X, corner.Y))];
}
