namespace Hornbook.Physics;

/// <summary>Between ratios and decibels; the only place where the factor 10 log10 is written.</summary>
public static class Decibels
{
    /// <summary>10 log10 of a power ratio [dB]; a ratio of 0 gives −∞.</summary>
    public static double FromRatio(double powerRatio) => 10.0 * Math.Log10(powerRatio);

    /// <summary>The power ratio of a level in decibels.</summary>
    public static double ToRatio(double levelDb) => Math.Pow(10.0, levelDb / 10.0);

    /// <summary>A power [W] as a level over one milliwatt [dBm]; 0 W gives −∞.</summary>
    public static double PowerToDbm(double power) => FromRatio(power / 1e-3);

    /// <summary>The power [W] of a level over one milliwatt [dBm].</summary>
    public static double DbmToPower(double levelDbm) => 1e-3 * ToRatio(levelDbm);
}
