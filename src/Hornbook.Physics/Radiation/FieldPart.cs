namespace Hornbook.Physics.Radiation;

/// <summary>What of a field is asked for: the kernel leaves out the rest where that saves work, and what it leaves there is not the field.</summary>
internal enum FieldPart
{
    /// <summary>E and H.</summary>
    Whole,

    /// <summary>H.</summary>
    Magnetic,

    /// <summary>H along the plane in which the sources lie, as its axes have it: y and z.</summary>
    MagneticAlong,
}
