namespace Hornbook.Physics.Radiation;

/// <summary>The field at a point.</summary>
/// <param name="Electric">E [V/m], peak phasor.</param>
/// <param name="Magnetic">H [A/m], peak phasor.</param>
public readonly record struct FieldSample(ComplexVector Electric, ComplexVector Magnetic)
{
    /// <summary>Time-mean power density ½ Re(E × H*) [W/m²].</summary>
    public Vector PowerDensity => ComplexVector.PowerDensity(Electric, Magnetic);

    /// <summary>Both fields together.</summary>
    internal FieldSample Plus(in FieldSample other) => new(Electric + other.Electric, Magnetic + other.Magnetic);
}
