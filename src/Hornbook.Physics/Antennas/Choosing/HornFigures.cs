using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>A horn and what it does at a frequency: the figures by which horns are chosen.</summary>
/// <param name="Horn">What is built.</param>
/// <param name="Frequency">f [Hz].</param>
/// <param name="Gain">On the axis, radiated norm, ohmic loss counted, mismatch not, G [-].</param>
/// <param name="HalfPowerWidthE">Full angle in the E plane [rad]; null where the power never falls to half.</param>
/// <param name="HalfPowerWidthH">Full angle in the H plane [rad]; null where the power never falls to half.</param>
/// <remarks>
/// The same numbers as <see cref="Antenna"/> and <see cref="BeamShape"/> give (a test holds them to 1e-9), ten times faster for a table horn and sixty
/// times for one a metre long, because the field over a horn's mouth is a product of two lines and so is its far field. That lets a design be
/// polished and a thousand build errors be tried.
/// </remarks>
public sealed record HornFigures(Horn Horn, double Frequency, double Gain, double? HalfPowerWidthE, double? HalfPowerWidthH)
{
    /// <summary>The figures of a horn.</summary>
    /// <param name="horn">What is built.</param>
    /// <param name="frequency">f [Hz]; above the guide's cut-off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide does not carry a wave at this frequency.</exception>
    public static HornFigures Of(Horn horn, double frequency)
    {
        ArgumentNullException.ThrowIfNull(horn);
        SeparableMouth mouth = new(horn, frequency);
        return new HornFigures(
            horn, frequency, mouth.Directivity * WallLoss.Efficiency(horn, frequency), mouth.HalfPowerWidthE, mouth.HalfPowerWidthH);
    }

    /// <summary>The same horn cut to a scale that a workshop can hold, with what it then does.</summary>
    /// <param name="step">Mouth and length become whole multiples of it [m]; finite, &gt; 0. The guide and a side that does not flare stay as they are.</param>
    /// <param name="rounding">Which multiple: the nearest, or <see cref="MidpointRounding.ToZero"/> for a horn that may not grow.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is out of range, or so coarse that no length is left.</exception>
    public HornFigures Rounded(double step, MidpointRounding rounding = MidpointRounding.ToEven)
    {
        Require.Positive(step);
        double Nearest(double size) => Math.Round(size / step, rounding) * step;
        double Side(double mouth, double throat) => mouth > throat ? Math.Max(throat, Nearest(mouth)) : throat;
        RectangularGuide guide = Horn.Guide;
        return Of(
            new Horn(guide, Side(Horn.MouthWidth, guide.Width), Side(Horn.MouthHeight, guide.Height), Nearest(Horn.Length), Horn.Walls),
            Frequency);
    }
}
