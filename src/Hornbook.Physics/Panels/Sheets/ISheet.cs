namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What a thin, flat panel is made of: the same everywhere, with air on both sides.</summary>
public interface ISheet
{
    /// <summary>From face to face [m]; 0 for an infinitely thin one.</summary>
    double Thickness { get; }

    /// <summary>What it does to waves of one frequency; worked out once and then quick to ask.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    ISheetResponse At(double frequency);

    /// <summary>Whether a second wave leaves the sheet in another direction: the numbers for the first hold, but power goes astray.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="across">Direction cosine of the wave's travel along the panel's own y [-].</param>
    /// <param name="along">Direction cosine along the panel's own z [-].</param>
    bool Scatters(double frequency, double across, double along) => false;

    /// <summary>Up to this angle to the normal only one wave leaves, in whatever plane it arrives [rad]; 90° where that is always so, 0 where it never is.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    double OneWaveUpTo(double frequency) => 0.5 * Math.PI;
}
