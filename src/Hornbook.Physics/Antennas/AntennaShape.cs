using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Antennas;

/// <summary>What a builder makes: the dimensions of an antenna, at no frequency yet.</summary>
public abstract record AntennaShape
{
    private protected AntennaShape(RectangularGuide guide, Conductor walls)
    {
        ArgumentNullException.ThrowIfNull(guide);
        ArgumentNullException.ThrowIfNull(walls);
        Guide = guide;
        Walls = walls;
    }

    /// <summary>The guide that feeds it.</summary>
    public RectangularGuide Guide { get; }

    /// <summary>What its walls are made of.</summary>
    public Conductor Walls { get; }

    /// <summary>Inside width of the mouth, in the H plane (own y), A [m].</summary>
    public abstract double MouthWidth { get; }

    /// <summary>Inside height of the mouth, in the E plane (own z), B [m].</summary>
    public abstract double MouthHeight { get; }

    /// <summary>The larger side of the mouth, the D of 2D²/λ as the trade takes it for horns [m].</summary>
    public double LargerSide => Math.Max(MouthWidth, MouthHeight);

    /// <summary>Measured magnitude of the reflection seen from the guide, |Γ| [-], 0 ≤ |Γ| &lt; 1; null where it is to be computed.</summary>
    public double? MeasuredReflection { get; init; }
}
