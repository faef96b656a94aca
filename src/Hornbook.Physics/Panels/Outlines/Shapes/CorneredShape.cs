using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A figure with straight sides.</summary>
public abstract class CorneredShape : Shape
{
    private readonly Coordinate[] _ring;

    private protected CorneredShape(IReadOnlyList<Vector> corners)
    {
        _ring = [.. corners.Append(corners[0]).Select(corner => new Coordinate(corner.Y, corner.Z))];
        Strokes = [.. corners.Select((corner, i) => new LineStroke(corner, corners[(i + 1) % corners.Count]))];
        Area = GeometryFactory.Default.CreatePolygon(_ring);
    }

    internal override IReadOnlyList<Stroke> Strokes { get; }

    internal override Geometry Area { get; }

    internal override bool Contains(Vector point) => PointLocation.IsInRing(new Coordinate(point.Y, point.Z), _ring);
}
