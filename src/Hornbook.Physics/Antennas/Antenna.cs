using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Antennas;

/// <summary>An antenna at a frequency: its shape turned into currents over its mouth, normalised to one watt radiated.</summary>
public sealed class Antenna
{
    private Antenna(AntennaShape shape, double frequency, CurrentSamples currents)
    {
        Shape = shape;
        Frequency = frequency;
        Currents = currents;
    }

    /// <summary>What was built.</summary>
    public AntennaShape Shape { get; }

    /// <summary>Frequency [Hz].</summary>
    public double Frequency { get; }

    /// <summary>Equivalent currents over the mouth in the antenna's own frame (mouth centre at the origin), for one watt radiated.</summary>
    public CurrentSamples Currents { get; }

    /// <summary>Directivity on the axis over all directions, radiated norm, D [-].</summary>
    public double Directivity { get; init; }

    /// <summary>Share of the incident power that is not reflected, 1 − |Γ|² [-].</summary>
    public double MismatchEfficiency { get; init; } = 1.0;

    /// <summary>Share of the accepted power that is not lost in the walls [-].</summary>
    public double OhmicEfficiency { get; init; } = 1.0;

    /// <summary>Gain with ohmic loss and without mismatch, G = D × ohmic efficiency [-] (IEEE Std 145).</summary>
    public double Gain => Directivity * OhmicEfficiency;

    /// <summary>An antenna at a frequency.</summary>
    /// <param name="shape">What was built.</param>
    /// <param name="frequency">Frequency [Hz]; above the guide's cut-off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide does not carry a wave at this frequency.</exception>
    public static Antenna At(AntennaShape shape, double frequency) => throw new NotImplementedException();
}
