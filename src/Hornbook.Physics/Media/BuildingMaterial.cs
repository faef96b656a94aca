using System.Numerics;

namespace Hornbook.Physics.Media;

/// <summary>A building material by the power laws of ITU-R P.2040, ε' = a f^b and σ = c f^d with f in GHz [ItuP2040].</summary>
public sealed record BuildingMaterial : Dielectric
{
    private readonly double _permittivityScale;
    private readonly double _permittivityPower;
    private readonly double _conductivityScale;
    private readonly double _conductivityPower;
    private readonly (double Lowest, double Highest) _band;

    internal BuildingMaterial(string name, double a, double b, double c, double d, double lowestGhz, double highestGhz)
        : base(name)
    {
        (_permittivityScale, _permittivityPower, _conductivityScale, _conductivityPower) = (a, b, c, d);
        _band = (lowestGhz * 1e9, highestGhz * 1e9);
    }

    /// <inheritdoc/>
    public override (double Lowest, double Highest) KnownBand => _band;

    /// <summary>Conductivity, σ = c f^d [S/m].</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not finite and positive.</exception>
    public double Conductivity(double frequency) => _conductivityScale * Math.Pow(Require.Positive(frequency) / 1e9, _conductivityPower);

    /// <inheritdoc/>
    public override Complex RelativePermittivity(double frequency) => new(
        _permittivityScale * Math.Pow(Require.Positive(frequency) / 1e9, _permittivityPower),
        -Conductivity(frequency) / (2.0 * Math.PI * frequency * Constants.ElectricConstant));
}
