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
}
