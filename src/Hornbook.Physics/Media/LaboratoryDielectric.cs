using System.Numerics;

namespace Hornbook.Physics.Media;

/// <summary>A material by its permittivity and loss tangent, the same at all frequencies: right near the one at which they were measured.</summary>
public sealed record LaboratoryDielectric : Dielectric
{
    /// <summary>A material.</summary>
    /// <param name="name">As it is asked for.</param>
    /// <param name="permittivity">ε' [-]; finite, ≥ 1.</param>
    /// <param name="lossTangent">ε''/ε' [-]; finite, ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public LaboratoryDielectric(string name, double permittivity, double lossTangent)
        : base(name)
    {
        Permittivity = Require.Within(permittivity, 1.0, double.MaxValue);
        LossTangent = Require.NotNegative(lossTangent);
    }

    /// <summary>ε' [-].</summary>
    public double Permittivity { get; }

    /// <summary>ε''/ε' [-].</summary>
    public double LossTangent { get; }

    /// <summary>The band of table-top benches, around the 10 GHz of the measurements.</summary>
    public override (double Lowest, double Highest) KnownBand => (3e9, 40e9);

    /// <inheritdoc/>
    public override Complex RelativePermittivity(double frequency)
    {
        Require.Positive(frequency);
        return new Complex(Permittivity, -Permittivity * LossTangent);
    }
}
