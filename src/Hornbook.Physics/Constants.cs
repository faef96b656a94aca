namespace Hornbook.Physics;

/// <summary>Constants of nature in SI units, CODATA 2022 adjustment [Codata2022].</summary>
public static class Constants
{
    /// <summary>Speed of light in vacuum, c [m/s]; exact (SI 2019).</summary>
    public const double SpeedOfLight = 299_792_458.0;

    /// <summary>Magnetic constant, µ0 [H/m]; 1.256 637 061 27(20)e-6, CODATA 2022 (not exact since 2019).</summary>
    public const double MagneticConstant = 1.256_637_061_27e-6;

    /// <summary>Electric constant, ε0 = 1/(µ0 c²) [F/m].</summary>
    public const double ElectricConstant = 1.0 / (MagneticConstant * SpeedOfLight * SpeedOfLight);

    /// <summary>Impedance of vacuum, η = µ0 c [Ω].</summary>
    public const double VacuumImpedance = MagneticConstant * SpeedOfLight;

    /// <summary>Boltzmann constant, k_B [J/K]; exact (SI 2019).</summary>
    public const double Boltzmann = 1.380_649e-23;

    /// <summary>Elementary charge, q [C]; exact (SI 2019).</summary>
    public const double ElementaryCharge = 1.602_176_634e-19;
}
