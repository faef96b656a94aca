namespace Hornbook.Bench.Files.Quantities;

/// <summary>How a number with a unit turns into the SI value.</summary>
public enum UnitScale
{
    /// <summary>Times the factor.</summary>
    Linear,

    /// <summary>Over the factor: for small units, so that "62 cm" is 62/100 and not 62 × 0.01, which differs in the last digit.</summary>
    Divided,

    /// <summary>Decibels of a power over the factor.</summary>
    PowerLevel,

    /// <summary>Decibels of a voltage over the factor.</summary>
    AmplitudeLevel,

    /// <summary>Degrees Celsius.</summary>
    Celsius,
}
