namespace Hornbook.Physics.Panels.Outlines.Curved;

/// <summary>The surface x = (y² + z²)/4f, hollow in front: Eq. outlines (5), (6). Radii are distances from its axis.</summary>
/// <param name="FocalLength">f [m].</param>
internal sealed record Paraboloid(double FocalLength)
{
    /// <summary>The point at a radius and a direction, from own y towards own z [rad].</summary>
    internal Vector At(double radius, double direction)
    {
        (double sin, double cos) = Math.SinCos(direction);
        return new Vector(radius * radius / (4.0 * FocalLength), radius * cos, radius * sin);
    }

    /// <summary>The length of the surface over that of its shadow along the axis, outwards at a radius.</summary>
    internal double Stretch(double radius) => Math.Sqrt(1.0 + Square(0.5 * radius / FocalLength));

    /// <summary>Length along the surface from its middle to a radius [m].</summary>
    internal double Way(double radius) => (0.5 * radius * Stretch(radius)) + (FocalLength * Math.Asinh(0.5 * radius / FocalLength));

    /// <summary>Area within a radius [m²].</summary>
    internal double Area(double radius)
    {
        // (s³ − 1) with s² − 1 = (r/2f)², without the difference of nearly equal numbers.
        double s = Stretch(radius);
        return 2.0 / 3.0 * Math.PI * radius * radius * ((s * s) + s + 1.0) / (s + 1.0);
    }

    /// <summary>Unit vector out of the hollow face above a point.</summary>
    internal Vector Normal(Vector point) => new Vector(1.0, -0.5 * point.Y / FocalLength, -0.5 * point.Z / FocalLength).Unit;

    /// <summary>Unit vector in the surface, outwards.</summary>
    internal Vector Outward(Vector point)
    {
        double radius = Math.Sqrt(Square(point.Y) + Square(point.Z));
        return new Vector(0.5 * radius / FocalLength, point.Y / radius, point.Z / radius).Unit;
    }

    /// <summary>A cell of the surface; across is own y, laid into the surface.</summary>
    internal Cell Cell(Vector centre, double area)
    {
        Vector normal = Normal(centre);
        return new Cell(centre, normal, (Vector.UnitY - (normal * normal.Y)).Unit, area);
    }

    private static double Square(double x) => x * x;
}
