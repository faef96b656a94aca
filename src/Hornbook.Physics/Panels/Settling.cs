namespace Hornbook.Physics.Panels;

/// <summary>When panels that exchange their fields are taken to have settled.</summary>
/// <param name="Residue">The share of the currents that may still be missing [-], root mean square; &gt; 0.</param>
/// <param name="MostSweeps">After so many sweeps the bench is said not to settle; the first is always made.</param>
/// <exception cref="ArgumentOutOfRangeException">The residue is not positive.</exception>
public sealed record Settling(double Residue, int MostSweeps)
{
    /// <summary>The share of the currents that may still be missing [-].</summary>
    public double Residue { get; } = Require.Positive(Residue);

    /// <summary>For readings: a fiftieth of a decibel of the currents.</summary>
    public static Settling Fine { get; } = new(2e-3, 30);

    /// <summary>While something is moved by hand: an eighth of a decibel of the currents.</summary>
    public static Settling InHand { get; } = new(1.5e-2, 30);

    /// <summary>For a search, whose cells leave some tenths of a decibel as well: a quarter of a decibel.</summary>
    public static Settling Rough { get; } = new(3e-2, 10);
}
