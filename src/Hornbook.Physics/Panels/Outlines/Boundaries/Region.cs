using Hornbook.Physics.Panels.Outlines.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>A part of a plane, put together from figures. Immutable.</summary>
internal sealed class Region
{
    // Places nearer to each other than this share of the extent are one: a micrometre of a metre.
    private const double Sameness = 1e-6;

    private readonly Lazy<Geometry> _area;

    internal Region(IReadOnlyList<Piece> pieces)
    {
        Pieces = pieces;
        Envelope all = new();
        foreach (Piece piece in pieces)
        {
            all.ExpandToInclude(piece.Shape.Area.EnvelopeInternal);
        }

        Tolerance = Sameness * Math.Max(all.Width, all.Height);
        _area = new Lazy<Geometry>(() => Combined(pieces));
    }

    /// <summary>The figures, in the order of their making.</summary>
    internal IReadOnlyList<Piece> Pieces { get; }

    /// <summary>Distance that counts as none [m].</summary>
    internal double Tolerance { get; }

    /// <summary>The region for the geometry library; circles as polygons.</summary>
    internal Geometry Area => _area.Value;

    /// <summary>Whether there is sheet at a point.</summary>
    internal bool Contains(Vector point)
    {
        for (int i = Pieces.Count - 1; i >= 0; i--)
        {
            if (Pieces[i].Shape.Contains(point))
            {
                return Pieces[i].IsSheet;
            }
        }

        return false;
    }

    private static Geometry Combined(IReadOnlyList<Piece> pieces)
    {
        Geometry area = GeometryFactory.Default.CreatePolygon();
        foreach (Piece piece in pieces)
        {
            SpatialFunction step = piece.IsSheet ? SpatialFunction.Union : SpatialFunction.Difference;
            area = OverlayNGRobust.Overlay(area, piece.Shape.Area, step);
        }

        return area;
    }
}
