using NetTopologySuite.Geometries;

namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>A straight side.</summary>
internal sealed class LineStroke : Stroke
{
    internal LineStroke(Vector start, Vector end)
    {
        Start = start;
        End = end;
        Length = (end - start).Length;
        Direction = (end - start).Unit;
    }

    internal Vector Start { get; }

    internal Vector End { get; }

    internal Vector Direction { get; }

    internal override double Length { get; }

    internal override bool IsClosed => false;

    internal override Vector At(double way) => Start + (Direction * way);

    internal override Vector Left(double way) => Vector.Cross(Vector.UnitX, Direction);

    internal override double? WayTo(Vector point, double tolerance)
    {
        double way = Vector.Dot(point - Start, Direction);
        return way >= -tolerance && way <= Length + tolerance && (point - At(way)).Length <= tolerance ? Math.Clamp(way, 0.0, Length) : null;
    }

    internal override Rim ToRim(double from, double to, bool sheetOnLeft) =>
        sheetOnLeft ? new StraightRim(At(from), At(to)) : new StraightRim(At(to), At(from));

    internal override Envelope Box(double from, double to)
    {
        (Vector a, Vector b) = (At(from), At(to));
        return new Envelope(a.Y, b.Y, a.Z, b.Z);
    }
}
