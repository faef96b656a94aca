namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>The kinds of field that round wires keep apart.</summary>
internal enum WireField
{
    /// <summary>Electric along the wires, the same on both sides of the grid.</summary>
    ElectricEven,

    /// <summary>Electric along the wires, opposite on both sides.</summary>
    ElectricOdd,

    /// <summary>Magnetic along the wires, the same on both sides.</summary>
    MagneticEven,

    /// <summary>Magnetic along the wires, opposite on both sides.</summary>
    MagneticOdd,
}
