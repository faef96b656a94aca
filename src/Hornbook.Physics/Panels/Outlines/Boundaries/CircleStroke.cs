using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>A full circle, walked from own y towards own z.</summary>
internal sealed class CircleStroke : Stroke
{
    // The corners lie 5e-5 of the radius outside, the middles of the sides 1e-4 inside.
    private const int Corners = 180;

    internal CircleStroke(Vector centre, double radius)
    {
        Centre = centre;
        Radius = radius;
    }

    internal Vector Centre { get; }

    internal double Radius { get; }

    internal override double Length => Math.Tau * Radius;

    internal override bool IsClosed => true;

    internal override Vector At(double way) => Centre - (Left(way) * Radius);

    internal override Vector Left(double way)
    {
        (double sin, double cos) = Math.SinCos(way / Radius);
        return new Vector(0.0, -cos, -sin);
    }

    internal override double? WayTo(Vector point, double tolerance)
    {
        Vector offset = point - Centre;
        double angle = Math.Atan2(offset.Z, offset.Y);
        return Math.Abs(offset.Length - Radius) <= tolerance ? Radius * (angle < 0.0 ? angle + Math.Tau : angle) : null;
    }

    internal override Rim ToRim(double from, double to, bool sheetOnLeft) =>
        new ArcRim(Centre, Radius, from / Radius, Math.Min((to - from) / Radius, Math.Tau), sheetOnLeft);

    internal override Envelope Box(double from, double to)
    {
        double quarter = 0.25 * Length;
        Envelope box = new();
        for (double way = Math.Ceiling(from / quarter) * quarter; way < to; way += quarter)
        {
            Include(box, At(way));
        }

        Include(box, At(from));
        Include(box, At(to));
        return box;
    }

    internal bool Encloses(Vector point)
    {
        Vector offset = point - Centre;
        return Vector.Dot(offset, offset) < Radius * Radius;
    }

    /// <summary>A closed ring of corners that encloses the same area as the circle.</summary>
    internal Coordinate[] Polygon()
    {
        double step = Math.Tau / Corners;
        double r = Radius * Math.Sqrt(step / Math.Sin(step));
        return
        [
            .. Enumerable.Range(0, Corners + 1).Select(i => (i % Corners) * step)
                .Select(angle => new Coordinate(Centre.Y + (r * Math.Cos(angle)), Centre.Z + (r * Math.Sin(angle))))
        ];
    }

    private static void Include(Envelope box, Vector point) => box.ExpandToInclude(point.Y, point.Z);
}
