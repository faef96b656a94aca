using System.Globalization;
using Hornbook.Physics.Panels.Outlines.Boundaries;
using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>What lies between two circles about one centre.</summary>
public sealed class RingShape : Shape
{
    private readonly CircleStroke _inner;
    private readonly CircleStroke _outer;

    /// <summary>A ring about a point.</summary>
    /// <param name="y">Centre along own y [m]; finite.</param>
    /// <param name="z">Centre along own z [m]; finite.</param>
    /// <param name="innerRadius">Radius of the inner circle [m]; finite, &gt; 0.</param>
    /// <param name="outerRadius">Radius of the outer circle [m]; finite, greater than the inner.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public RingShape(double y, double z, double innerRadius, double outerRadius)
    {
        Vector centre = new(0.0, Require.Finite(y), Require.Finite(z));
        _inner = new CircleStroke(centre, Require.Positive(innerRadius));
        _outer = new CircleStroke(centre, Require.Positive(outerRadius));
        if (outerRadius <= innerRadius)
        {
            throw new ArgumentOutOfRangeException(nameof(outerRadius), outerRadius, string.Create(
                CultureInfo.InvariantCulture, $"outerRadius = {outerRadius} m; must be greater than the inner radius, {innerRadius} m"));
        }

        Strokes = [_inner, _outer];
        LinearRing hole = GeometryFactory.Default.CreateLinearRing(_inner.Polygon());
        Area = GeometryFactory.Default.CreatePolygon(GeometryFactory.Default.CreateLinearRing(_outer.Polygon()), [hole]);
    }

    internal override IReadOnlyList<Stroke> Strokes { get; }

    internal override Geometry Area { get; }

    internal override bool Contains(Vector point) => _outer.Encloses(point) && !_inner.Encloses(point);
}
