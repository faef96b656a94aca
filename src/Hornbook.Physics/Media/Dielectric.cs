using System.Numerics;

namespace Hornbook.Physics.Media;

/// <summary>What a wave can pass through.</summary>
/// <param name="Name">As it is asked for: "plywood", "PTFE", …</param>
public abstract record Dielectric(string Name)
{
    /// <summary>Frequencies for which its values are known [Hz].</summary>
    public abstract (double Lowest, double Highest) KnownBand { get; }

    /// <summary>Relative permittivity ε_r = ε' − jε'' [-] at a frequency [Hz]; ε'' ≥ 0 with e^{+jωt} (convention C1).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not finite and positive.</exception>
    public abstract Complex RelativePermittivity(double frequency);

    /// <summary>How fast a plane wave dies out inside, in nepers per metre, k Im√ε_r [1/m].</summary>
    public double Attenuation(double frequency) =>
        -FreeSpace.Wavenumber(frequency) * Complex.Sqrt(RelativePermittivity(frequency)).Imaginary;
}
