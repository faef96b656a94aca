namespace Hornbook.Physics.Guides;

/// <summary>A range of frequencies, both ends included.</summary>
/// <param name="Lowest">Lower end [Hz].</param>
/// <param name="Highest">Upper end [Hz]; ≥ the lower one.</param>
public readonly record struct FrequencyBand(double Lowest, double Highest)
{
    /// <summary>Whether a frequency [Hz] lies in the band.</summary>
    public bool Contains(double frequency) => frequency >= Lowest && frequency <= Highest;

    /// <summary>The band with both ends multiplied by a factor [-].</summary>
    public FrequencyBand Scaled(double factor) => new(Lowest * factor, Highest * factor);
}
