namespace Hornbook.Physics.Panels.Outlines;

/// <summary>A smooth piece of the line where a panel ends: a straight side, the edge of a slit, a round hole.</summary>
public abstract class Rim
{
    /// <summary>Length [m].</summary>
    public abstract double Length { get; }

    /// <summary>Whether it was cut along a straight line, before any bending: the wave through a slit is followed between such rims.</summary>
    internal virtual bool IsStraight => false;

    /// <summary>The foot of the perpendicular from a point of the sheet to this piece.</summary>
    /// <param name="point">A point of the sheet, own frame [m].</param>
    /// <returns>Null where the perpendicular misses the piece or the point lies on the side without a sheet.</returns>
    public abstract RimFoot? Foot(Vector point);
}
