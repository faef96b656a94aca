namespace Hornbook.Physics.Detection;

/// <summary>Which closed form is solved for a diode.</summary>
public enum DiodeLaw
{
    /// <summary>As published, with the constant term Λ R_s I_s/n; it reads nothing below the power where that term outweighs the signal.</summary>
    HarrisonLePolozec,

    /// <summary>The same without the constant term: the balance of the direct currents. Square down to no power at all.</summary>
    CurrentBalance,
}
