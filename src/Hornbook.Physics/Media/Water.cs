using System.Numerics;

namespace Hornbook.Physics.Media;

/// <summary>Pure water, the double-Debye form of ITU-R P.527 [ItuP527].</summary>
public sealed record Water : Dielectric
{
    private const double IcePoint = 273.15;

    /// <summary>Water at a temperature.</summary>
    /// <param name="temperature">[K]; from 273.15 to 323.15, liquid and not hot.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of its range.</exception>
    public Water(double temperature)
        : base("water") => Temperature = Require.Within(temperature, IcePoint, IcePoint + 50.0);

    /// <summary>Absolute temperature [K].</summary>
    public double Temperature { get; }

    /// <inheritdoc/>
    public override (double Lowest, double Highest) KnownBand => (1e6, 1e12);

    /// <summary>ε_r = (ε_s−ε_1)/(1+jf/f_1) + (ε_1−ε_∞)/(1+jf/f_2) + ε_∞, with θ = 300/T − 1.</summary>
    /// <inheritdoc/>
    public override Complex RelativePermittivity(double frequency)
    {
        double gigahertz = Require.Positive(frequency) / 1e9;
        double theta = (300.0 / Temperature) - 1.0;
        double atRest = 77.66 + (103.3 * theta);
        double between = 0.0671 * atRest;
        double fast = 3.52 - (7.52 * theta);
        double first = 20.20 - (146.4 * theta) + (316.0 * theta * theta);
        double second = 39.8 * first;
        return ((atRest - between) / new Complex(1.0, gigahertz / first)) + ((between - fast) / new Complex(1.0, gigahertz / second)) + fast;
    }
}
