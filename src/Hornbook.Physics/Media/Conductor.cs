namespace Hornbook.Physics.Media;

/// <summary>A metal of which guides and horns are made.</summary>
/// <param name="Name">As in a bench file: "copper", "brass", …</param>
/// <param name="Conductivity">σ at room temperature [S/m]; finite, &gt; 0.</param>
public sealed record Conductor(string Name, double Conductivity)
{
    /// <summary>Brass, 2.564e7 S/m [Pozar2012]. Brasses differ: free-cutting brass has about 1.57e7.</summary>
    public static Conductor Brass { get; } = new("brass", 2.564e7);

    /// <summary>Surface resistance R_s = √(π f µ0/σ) [Ω] at a frequency [Hz] (smooth surface).</summary>
    public double SurfaceResistance(double frequency) =>
        Math.Sqrt(Math.PI * Require.Positive(frequency) * Constants.MagneticConstant / Conductivity);
}
