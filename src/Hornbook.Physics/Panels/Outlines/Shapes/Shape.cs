using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A figure in the plane of a flat panel, to be added to it or taken away from it.</summary>
public abstract class Shape
{
    private protected Shape()
    {
    }

    /// <summary>The lines that bound it.</summary>
    internal abstract IReadOnlyList<Stroke> Strokes { get; }

    /// <summary>The figure for the geometry library, y and z as its x and y; circles as polygons of the same area.</summary>
    internal abstract Geometry Area { get; }

    /// <summary>Whether a point of the plane lies in the figure; on its very edge, either.</summary>
    internal abstract bool Contains(Vector point);
}
