using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>What a horn is to be made for: the guide that it joins, the frequency and the metal.</summary>
public sealed record Feed
{
    /// <summary>A feed.</summary>
    /// <param name="guide">The guide that the horn joins.</param>
    /// <param name="frequency">f [Hz]; finite, above the guide's cut-off.</param>
    /// <param name="walls">What the horn's walls are made of.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide does not carry a wave at this frequency.</exception>
    public Feed(RectangularGuide guide, double frequency, Conductor walls)
    {
        ArgumentNullException.ThrowIfNull(guide);
        ArgumentNullException.ThrowIfNull(walls);
        Guide = guide;
        Frequency = guide.Carried(frequency);
        Walls = walls;
    }

    /// <summary>The guide that the horn joins.</summary>
    public RectangularGuide Guide { get; }

    /// <summary>f [Hz].</summary>
    public double Frequency { get; }

    /// <summary>What the horn's walls are made of.</summary>
    public Conductor Walls { get; }

    /// <summary>Free-space wavelength, λ [m].</summary>
    public double Wavelength => FreeSpace.Wavelength(Frequency);

    /// <summary>Gain of the open guide itself, the least that a wish for gain can be [-].</summary>
    public double OpenGuideGain => Antenna.At(new OpenGuide(Guide, Walls), Frequency).Gain;

    /// <summary>A horn on this feed.</summary>
    internal Horn Horn(double mouthWidth, double mouthHeight, double length) => new(Guide, mouthWidth, mouthHeight, length, Walls);
}
