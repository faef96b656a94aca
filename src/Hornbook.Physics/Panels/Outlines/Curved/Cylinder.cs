namespace Hornbook.Physics.Panels.Outlines.Curved;

/// <summary>Rolls the plane x = 0 on a circular cylinder that touches it along own y or z: Eq. outlines (4).</summary>
/// <param name="Radius">Radius [m].</param>
/// <param name="Axis">Its direction.</param>
/// <param name="Side">+1 where its axis lies in front of the plane, −1 behind it.</param>
internal sealed record Cylinder(double Radius, BendAxis Axis, double Side)
{
    /// <summary>The coordinate of a flat point that is bent.</summary>
    internal double Bent(Vector flat) => Axis == BendAxis.Z ? flat.Y : flat.Z;

    /// <summary>Where a flat point comes to lie.</summary>
    internal Vector Rolled(Vector flat)
    {
        (double sin, double cos) = Math.SinCos(Bent(flat) / Radius);
        return Along(Side * Radius * (1.0 - cos), Radius * sin, Straight(flat));
    }

    /// <summary>The direction that a direction of the flat sheet takes at a flat point.</summary>
    internal Vector Turned(Vector flat, Vector direction)
    {
        (double sin, double cos) = Math.SinCos(Bent(flat) / Radius);
        double bent = Bent(direction), forward = direction.X;
        return Along((forward * cos) + (Side * bent * sin), (bent * cos) - (Side * forward * sin), Straight(direction));
    }

    /// <summary>A cell of the flat sheet on the cylinder.</summary>
    internal Cell Rolled(Cell flat) =>
        new(Rolled(flat.Centre), Turned(flat.Centre, flat.Normal), Turned(flat.Centre, flat.Across), flat.Area);

    /// <summary>The flat point that comes to lie at a point of the cylinder; of a point beside the cylinder, the one on the same radius.</summary>
    internal Vector Unrolled(Vector point) =>
        Along(0.0, Radius * Math.Atan2(Bent(point), Radius - (Side * point.X)), Straight(point));

    private double Straight(Vector flat) => Axis == BendAxis.Z ? flat.Z : flat.Y;

    private Vector Along(double x, double bent, double straight) => Axis == BendAxis.Z ? new Vector(x, bent, straight) : new Vector(x, straight, bent);
}
