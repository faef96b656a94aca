using Hornbook.Physics;

namespace Hornbook.Tabletop;

/// <summary>A straight line between two places of the bench, to measure with.</summary>
/// <param name="From">One end [m].</param>
/// <param name="To">The other end [m].</param>
public sealed record Ruler(Vector From, Vector To)
{
    /// <summary>From one end to the other [m].</summary>
    public double Length => (To - From).Length;

    public Vector At(RulerEnd end) => end == RulerEnd.From ? From : To;

    public Ruler With(RulerEnd end, Vector place) => end == RulerEnd.From ? this with { From = place } : this with { To = place };

    /// <summary>The length in both units and in wavelengths: "41.5 cm, 16.34 in, 14.57 λ".</summary>
    /// <param name="wavelength">λ [m].</param>
    public string Measured(double wavelength) =>
        $"{Shown.Length(Length, LengthUnit.Centimetre)}, {Shown.Length(Length, LengthUnit.Inch)}, {Shown.Wavelengths(Length / wavelength)}";
}

/// <summary>Which end of a ruler.</summary>
public enum RulerEnd
{
    /// <summary>Where it begins.</summary>
    From,

    /// <summary>Where it ends.</summary>
    To,
}
