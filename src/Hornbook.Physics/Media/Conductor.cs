namespace Hornbook.Physics.Media;

/// <summary>A metal of which guides and horns are made.</summary>
/// <param name="Name">As in a bench file: "copper", "brass", …</param>
/// <param name="Conductivity">σ at room temperature [S/m]; finite, &gt; 0.</param>
/// <exception cref="ArgumentOutOfRangeException">The conductivity is not finite and positive.</exception>
public sealed record Conductor(string Name, double Conductivity)
{
    /// <summary>Brass, 2.564e7 S/m [Pozar2012]. Brasses differ: free-cutting brass has about 1.57e7.</summary>
    public static Conductor Brass { get; } = new("brass", 2.564e7);

    /// <summary>σ at room temperature [S/m].</summary>
    public double Conductivity { get; init; } = Require.Positive(Conductivity);

    /// <summary>Surface resistance R_s = √(π f µ0/σ) [Ω] at a frequency [Hz] (smooth surface).</summary>
    public double SurfaceResistance(double frequency) =>
        Math.Sqrt(Math.PI * Require.Positive(frequency) * Constants.MagneticConstant / Conductivity);

    /// <summary>Depth at which the current has fallen to 1/e, δ = 1/√(π f µ0 σ) [m] at a frequency [Hz].</summary>
    /// <remarks>A foil or a plating of five depths is as good as solid metal.</remarks>
    public double SkinDepth(double frequency) =>
        1.0 / Math.Sqrt(Math.PI * Require.Positive(frequency) * Constants.MagneticConstant * Conductivity);
}
