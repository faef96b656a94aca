using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A disc, or a round hole.</summary>
public sealed class DiscShape : Shape
{
    private readonly CircleStroke _edge;

    /// <summary>A disc about a point.</summary>
    /// <param name="y">Centre along own y [m]; finite.</param>
    /// <param name="z">Centre along own z [m]; finite.</param>
    /// <param name="radius">Radius [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public DiscShape(double y, double z, double radius)
    {
        _edge = new CircleStroke(new Vector(0.0, Require.Finite(y), Require.Finite(z)), Require.Positive(radius));
        Strokes = [_edge];
        Area = GeometryFactory.Default.CreatePolygon(_edge.Polygon());
    }

    internal override IReadOnlyList<Stroke> Strokes { get; }

    internal override Geometry Area { get; }

    internal override bool Contains(Vector point) => _edge.Encloses(point);
}
