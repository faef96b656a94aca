using Hornbook.Physics.Media;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A flat layer of one material.</summary>
public sealed record Layer
{
    /// <summary>A layer.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="thickness">d [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is out of its range.</exception>
    public Layer(Dielectric material, double thickness)
    {
        ArgumentNullException.ThrowIfNull(material);
        Material = material;
        Thickness = Require.Positive(thickness);
    }

    /// <summary>What it is made of.</summary>
    public Dielectric Material { get; }

    /// <summary>d [m].</summary>
    public double Thickness { get; }
}
