namespace Hornbook.Physics.Antennas;

/// <summary>A cut through the pattern that holds the axis.</summary>
public enum PatternPlane
{
    /// <summary>The plane of the electric field: up and down at rest.</summary>
    Electric,

    /// <summary>The plane of the magnetic field: left and right at rest.</summary>
    Magnetic,

    /// <summary>Halfway between them, at 45°, where the cross-polar part of a mouth is largest.</summary>
    Diagonal,
}
