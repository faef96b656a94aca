namespace Hornbook.Physics.Panels.Outlines.Boundaries;

/// <summary>Where two strokes meet.</summary>
internal static class Crossing
{
    /// <summary>The points that lie on both: crossings and touching points.</summary>
    /// <remarks>What lies on one another ends at a corner, where the figure's next side is the one that crosses.</remarks>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    /// <param name="tolerance">Distance that counts as none [m].</param>
    internal static IEnumerable<Vector> Of(Stroke a, Stroke b, double tolerance) =>
        Candidates(a, b, tolerance)
            .Where(point => a.WayTo(point, tolerance) is not null && b.WayTo(point, tolerance) is not null);

    private static IEnumerable<Vector> Candidates(Stroke a, Stroke b, double tolerance) => (a, b) switch
    {
        (LineStroke first, LineStroke second) => Lines(first, second),
        (CircleStroke first, CircleStroke second) => Circles(first, second, tolerance),
        (CircleStroke circle, LineStroke line) => Chord(circle, line.Start, line.Direction, tolerance),
        (LineStroke line, CircleStroke circle) => Chord(circle, line.Start, line.Direction, tolerance),
        _ => [],
    };

    private static IEnumerable<Vector> Lines(LineStroke a, LineStroke b)
    {
        double sine = Vector.Cross(a.Direction, b.Direction).X;
        return sine == 0.0 ? [] : [a.At(Vector.Cross(b.Start - a.Start, b.Direction).X / sine)];
    }

    private static IEnumerable<Vector> Circles(CircleStroke a, CircleStroke b, double tolerance)
    {
        Vector between = b.Centre - a.Centre;
        double distance = between.Length;
        if (distance <= tolerance)
        {
            return [];
        }

        // The line through both crossings stands at right angles to that of the centres.
        double along = 0.5 * (distance + (((a.Radius * a.Radius) - (b.Radius * b.Radius)) / distance));
        Vector direction = between.Unit;
        return Chord(a, a.Centre + (direction * along), new Vector(0.0, -direction.Z, direction.Y), tolerance);
    }

    private static IEnumerable<Vector> Chord(CircleStroke circle, Vector start, Vector direction, double tolerance)
    {
        Vector middle = start + (direction * Vector.Dot(circle.Centre - start, direction));
        double off = (middle - circle.Centre).Length;
        if (off > circle.Radius + tolerance)
        {
            return [];
        }

        double half = Math.Sqrt(Math.Max(0.0, (circle.Radius * circle.Radius) - (off * off)));
        return [middle - (direction * half), middle + (direction * half)];
    }
}
